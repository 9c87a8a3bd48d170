/** When nothing fits: the earliest meet day and the latest start day that do, and the plan that bends the fewest rules. */
import type { Calendar } from "./calendar/count-weeks";
import { addDays, type Day } from "./calendar/day";
import { bendPreparation, choosePreparations, type Bent, type WeeksAsked } from "./choose-preparation";
import { M1, M3, M4, M5 } from "./rules/model";
import { LIMITS } from "./rules/limits";
import type { Terms } from "./preparation";

export interface Found {
  readonly earliestMeetDate: Day | null;
  readonly latestStartDate: Day | null;
  readonly bent: Bent | null;
}

/** Both days are the outermost of their week: a day earlier, or later, is a week less. */
export function findNearest(terms: Terms, weeks: WeeksAsked, calendar: Calendar): Found {
  const needed = leastAvailable(terms, weeks);
  const bent = bendPreparation(terms, weeks, [M1.id, M3.id, M4.id, M5.id]);
  if (needed === null) return { earliestMeetDate: null, latestStartDate: null, bent };
  return {
    earliestMeetDate: addDays(calendar.firstWeekStart, (needed - 1) * 7),
    latestStartDate: addDays(calendar.meetWeekStart, (1 - needed) * 7 + 6),
    bent,
  };
}

/** The fewest weeks that fit; null when more weeks do not help. More weeks never hurt: the first may be bridge weeks. */
function leastAvailable(terms: Terms, weeks: WeeksAsked): number | null {
  for (let available = weeks.available + 1; available <= LIMITS.prepWeeks.max + 1; available++) {
    if (choosePreparations(terms, { ...weeks, available }).length > 0) return available;
  }
  return null;
}

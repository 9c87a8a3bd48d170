/** The weeks between the first training day and the meet. */
import type { Day } from "./day";
import { startOfWeek, weeksCounted, type Weekday } from "./week";

export interface Calendar {
  /** From the week of the first training day to meet week, both counted. */
  readonly available: number;
  readonly firstWeekStart: Day;
  readonly meetWeekStart: Day;
}

export function countWeeks(startDate: Day, meetDate: Day, weekStart: Weekday): Calendar {
  return {
    available: weeksCounted(startDate, meetDate, weekStart),
    firstWeekStart: startOfWeek(startDate, weekStart),
    meetWeekStart: startOfWeek(meetDate, weekStart),
  };
}

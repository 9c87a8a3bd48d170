/** Why nothing fits, and what would. */
import { daysBetween, startOfWeek, type DoesNotFit } from "../../engine";
import { weeksText } from "./count-text";
import { dayText } from "./day-text";
import { rhythmText, splitsText } from "./plan-text";
import { ruleText } from "./rule-text";

export function nearestText({ request, binding, nearest }: DoesNotFit): string[] {
  const { startDate, meetDate, weekStart } = request;
  const available = daysBetween(startOfWeek(startDate, weekStart), startOfWeek(meetDate, weekStart)) / 7 + 1;
  const lines = [
    `No plan fits in the ${weeksText(available)} from ${dayText(startDate)} to the meet on ${dayText(meetDate)}.`,
    `In the way: ${binding.map(ruleText).join("; ")}.`,
  ];
  if (nearest.earliestMeetDate !== null) {
    lines.push(`The same start fits a meet on ${dayText(nearest.earliestMeetDate)} or later.`);
  }
  if (nearest.latestStartDate !== null) {
    lines.push(`The same meet fits a start on ${dayText(nearest.latestStartDate)} or earlier.`);
  }
  if (nearest.earliestMeetDate === null && nearest.latestStartDate === null) {
    lines.push("No other day helps: what was set by hand is in the way.");
  }
  if (nearest.plan !== null) {
    const { plan, breaks } = nearest.plan;
    const rhythm = rhythmText(plan.mesocycles.map((mesocycle) => mesocycle.hardWeeks));
    lines.push(
      `Nearest plan: ${weeksText(plan.directedWeeks)}, ${rhythm}; ${splitsText(plan)}. It breaks: ${breaks.map(ruleText).join("; ")}.`,
    );
  }
  return lines;
}

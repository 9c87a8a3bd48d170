/** The weeks between the first training day and the meet. */
import { daysBetween, daysEvery, type Day } from "./day";
import { startOfWeek, type Weekday } from "./week";

export interface Calendar {
  /** From the week of the first training day to meet week, both counted. */
  readonly available: number;
  readonly firstWeekStart: Day;
  readonly meetWeekStart: Day;
  /** First day of every week. */
  readonly weekStarts: readonly Day[];
}

export function countWeeks(startDate: Day, meetDate: Day, weekStart: Weekday): Calendar {
  const firstWeekStart = startOfWeek(startDate, weekStart);
  const meetWeekStart = startOfWeek(meetDate, weekStart);
  const available = daysBetween(firstWeekStart, meetWeekStart) / 7 + 1;
  return { available, firstWeekStart, meetWeekStart, weekStarts: daysEvery(firstWeekStart, 7, available) };
}

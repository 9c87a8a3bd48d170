/** Weeks that begin on a weekday of the coach's choice. */
import { addDays, weekdayOf, type Day } from "./day";

export const WEEKDAYS = [
  "sunday",
  "monday",
  "tuesday",
  "wednesday",
  "thursday",
  "friday",
  "saturday",
] as const;
export type Weekday = (typeof WEEKDAYS)[number];

/** The first day of the week that holds `day`. */
export function startOfWeek(day: Day, weekStart: Weekday): Day {
  const back = (weekdayOf(day) - WEEKDAYS.indexOf(weekStart) + 7) % 7;
  return addDays(day, -back);
}

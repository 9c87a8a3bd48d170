/**
 * Days as ISO text (yyyy-mm-dd), free of clock and time zone. The only file that imports date-fns. Everything is
 * calendar arithmetic on local midnights, which date-fns keeps right across daylight saving.
 */
import { addDays as addCalendarDays, differenceInCalendarDays, lightFormat } from "date-fns";

/** A calendar day, `yyyy-mm-dd`. */
export type Day = string;

const SHAPE = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Local midnight of a day, or null where the text is no day that exists. */
function toDate(text: string): Date | null {
  const parts = SHAPE.exec(text);
  if (!parts) return null;
  const [year, month, date] = [Number(parts[1]), Number(parts[2]) - 1, Number(parts[3])];
  const midnight = new Date(year, month, date);
  if (year < 100) midnight.setFullYear(year);
  return midnight.getMonth() === month && midnight.getDate() === date ? midnight : null;
}

function dateOf(day: Day): Date {
  const date = toDate(day);
  if (date === null) throw new RangeError(`Not a day: ${day}\nMaybe it was not read through request.ts`);
  return date;
}

const dayOf = (date: Date): Day => lightFormat(date, "yyyy-MM-dd");

/** Whether `text` is a day that exists: "2027-02-30" is not. */
export function isDay(text: unknown): text is Day {
  return typeof text === "string" && toDate(text) !== null;
}

/** The day `count` days after `day` (before it when negative). */
export function addDays(day: Day, count: number): Day {
  return dayOf(addCalendarDays(dateOf(day), count));
}

/** `count` days from `day` on, `step` days apart. */
export function daysEvery(day: Day, step: number, count: number): readonly Day[] {
  const first = dateOf(day);
  return Array.from({ length: count }, (_, index) => dayOf(addCalendarDays(first, index * step)));
}

/** Days from `from` to `to`: positive when `to` is later. */
export function daysBetween(from: Day, to: Day): number {
  return differenceInCalendarDays(dateOf(to), dateOf(from));
}

/** 0 for Sunday to 6 for Saturday. */
export function weekdayOf(day: Day): number {
  return dateOf(day).getDay();
}

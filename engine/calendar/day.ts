/**
 * Days as ISO text (yyyy-mm-dd), free of clock and time zone. The only room that imports date-fns.
 * Everything is calendar arithmetic on local midnights, which date-fns keeps right across daylight saving.
 */
import {
  addDays as addCalendarDays,
  differenceInCalendarDays,
  isValid,
  lightFormat,
  parseISO,
} from "date-fns";

/** A calendar day, `yyyy-mm-dd`. */
export type Day = string;

const SHAPE = /^\d{4}-\d{2}-\d{2}$/;

/** Whether `text` is a day that exists: "2027-02-30" is not. */
export function isDay(text: unknown): text is Day {
  return typeof text === "string" && SHAPE.test(text) && isValid(parseISO(text));
}

/** The day `count` days after `day` (before it when negative). */
export function addDays(day: Day, count: number): Day {
  return lightFormat(addCalendarDays(parseISO(day), count), "yyyy-MM-dd");
}

/** Days from `from` to `to`: positive when `to` is later. */
export function daysBetween(from: Day, to: Day): number {
  return differenceInCalendarDays(parseISO(to), parseISO(from));
}

/** 0 for Sunday to 6 for Saturday. */
export function weekdayOf(day: Day): number {
  return parseISO(day).getDay();
}

/**
 * Worksheet dates as ISO days. A worksheet counts days from 1 = 1900-01-01 and believes in a 29 February 1900
 * (serial 60), so that every later day is one number further on. Whole-number arithmetic: no clock, no time zone.
 * Workbooks on the 1904 date system count 1,462 days less; a serial number alone does not tell.
 */

const DAYS_TO_1970 = 25569;
const FALSE_LEAP_DAY = 60;
/** 9999-12-31, the last day a worksheet knows. */
const LAST_SERIAL = 2958465;
/** 1950-01-01. A smaller number in a date cell, such as 2027, is a slip and no date anybody plans from. */
const FIRST_PLAUSIBLE_SERIAL = 18264;

const DATE_TIME = /^(\d{4}-\d{2}-\d{2})[T ]\d{1,2}:\d{2}/;

/** The ISO day of a serial number, its fraction (the time of day) dropped; null where there is no such day. */
export function dayOfSerial(serial: number): string | null {
  if (!Number.isFinite(serial)) return null;
  const whole = Math.floor(serial);
  if (whole < 1 || whole > LAST_SERIAL || whole === FALSE_LEAP_DAY) return null;
  return isoDay((whole < FALSE_LEAP_DAY ? whole + 1 : whole) - DAYS_TO_1970);
}

/**
 * A date cell's content as the engine wants it: a plausible serial number becomes its ISO day, an ISO date-time
 * is cut to its day, and anything else stays as it is, so that the engine names it.
 */
export function readDay(content: unknown): unknown {
  if (typeof content === "number") {
    const isPlausible = content >= FIRST_PLAUSIBLE_SERIAL;
    return (isPlausible ? dayOfSerial(content) : null) ?? content;
  }
  if (typeof content === "string") return DATE_TIME.exec(content.trim())?.[1] ?? content;
  return content;
}

/**
 * The proleptic Gregorian day a number of days after 1970-01-01. Eras of 400 years (146,097 days) are counted
 * from 0000-03-01, so that the leap day ends its year.
 */
function isoDay(daysFrom1970: number): string {
  const fromMarch = daysFrom1970 + 719468;
  const era = Math.floor(fromMarch / 146097);
  const dayOfEra = fromMarch - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) /
      365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const date = dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1;
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  const padded = (part: number, length: number) => String(part).padStart(length, "0");
  return `${padded(year, 4)}-${padded(month, 2)}-${padded(date, 2)}`;
}

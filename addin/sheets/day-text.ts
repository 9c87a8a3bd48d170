/** Days in words and as serial numbers, without the machine's locale. */
import { addDays, daysBetween, weekdayOf, type Day } from "../../engine";

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;
const WEEKDAYS = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"] as const;

/** "Mon 3 May 2027" */
export function dayText(day: Day): string {
  const weekday = WEEKDAYS[weekdayOf(day)]!.slice(0, 3);
  return `${weekday} ${Number(day.slice(8, 10))} ${MONTHS[Number(day.slice(5, 7)) - 1]!} ${day.slice(0, 4)}`;
}

/** The serial number a worksheet counts days by; 36526 is 1 January 2000. */
export function daySerial(day: Day): number {
  return daysBetween("2000-01-01", day) + 36526;
}

/** The day of a serial number. */
export function dayOfSerial(serial: number): Day {
  return addDays("2000-01-01", serial - 36526);
}

/**
 * Run under one time zone: walks three years day by day and compares the engine's days with those of UTC arithmetic,
 * which knows no change of clocks. Prints what differs.
 */
import { addDays, daysBetween, daysEvery, isDay, weekdayOf } from "../../../engine/calendar/day";

const FIRST = "2026-01-01";
const DAYS = 1096;
const utc = (index: number) => new Date(Date.UTC(2026, 0, 1 + index));
const faults: string[] = [];
const walked = daysEvery(FIRST, 1, DAYS);
for (let index = 0; index < DAYS; index++) {
  const day = utc(index).toISOString().slice(0, 10);
  const found = addDays(FIRST, index);
  if (found !== day || walked[index] !== day) faults.push(`${index}: ${found}, ${walked[index]} for ${day}`);
  if (!isDay(day) || daysBetween(FIRST, day) !== index)
    faults.push(`${day}: ${daysBetween(FIRST, day)} days`);
  if (weekdayOf(day) !== utc(index).getUTCDay()) faults.push(`${day}: weekday ${weekdayOf(day)}`);
}
console.log(JSON.stringify({ zone: process.env.TZ, days: walked.length, faults }));

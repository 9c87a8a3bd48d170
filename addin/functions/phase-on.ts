/** Which phase a lift is in on a given day. */
import { isDay, type Day, type Lift, type Planned } from "../../engine/index";
import { readCell } from "../read/cell-value";
import type { Table } from "../read/table";
import { allowedText, givenText } from "../sheets/words";
import { readLift, toRows } from "./arguments";
import { eachLifter, plannedCells, readLifters, type Result, type ResultCell } from "./cell";

/** @param days one day for all rows, or a column with one day a row, its own heading allowed. */
export function tellPhaseOn(
  rows: unknown,
  days: unknown,
  liftGiven: unknown,
  headings: unknown,
): ResultCell[][] {
  const asked = readLift(liftGiven);
  const table = readLifters(rows, headings);
  const dayOf = matchDays(toRows(days).flat(), table);
  return eachLifter(table, 1, (row, index): Result => {
    if ("message" in asked) return [asked.message];
    if (typeof dayOf === "string") return [dayOf];
    const day = readCell("meetDate", dayOf(index));
    if (!isDay(day))
      return [`Day: ${day === null ? "blank" : `given ${givenText(day)}`}; allowed: ${ALLOWED}.`];
    return plannedCells(row, (answer) => [phaseOn(answer, day, asked.lift)]);
  });
}

/** The day that belongs to each row; or the message where days and rows do not pair up. */
function matchDays(days: readonly unknown[], { rows, above }: Table): string | ((index: number) => unknown) {
  if (days.length <= 1) return () => days[0];
  if (days.length === rows.length) return (index) => days[index];
  if (days.length === rows.length + above) return (index) => days[above + index];
  return `Day: given ${days.length} days for ${rows.length} rows; allowed: one day, or one a row.`;
}

const ALLOWED = allowedText({ kind: "day" });

/** The phase of the week that holds the day; words where it lies in no directed week. */
function phaseOn({ plan, request }: Planned, day: Day, lift: Lift): string {
  if (day < request.startDate) return "before the start";
  if (day > plan.meetDate) return "after the meet";
  const begun = plan.weeks.filter(({ startDate }) => startDate <= day);
  return begun.at(-1)!.phase?.[lift] ?? "bridge";
}

/** How many weeks of each phase one lift has. */
import { PHASES } from "../../engine/index";
import { readLift } from "./arguments";
import { eachLifter, plannedCells, readLifters, type ResultCell } from "./cell";

export function countPhaseWeeks(rows: unknown, liftGiven: unknown, headings: unknown): ResultCell[][] {
  const asked = readLift(liftGiven);
  return eachLifter(readLifters(rows, headings), PHASES.length, (row) => {
    if ("message" in asked) return [asked.message];
    return plannedCells(row, ({ plan }) => PHASES.map((phase) => plan.lifts[asked.lift][phase]));
  });
}

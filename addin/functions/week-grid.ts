/** One lifter's weeks as a block of cells with its own headings. */
import { LIFTS } from "../../engine/index";
import { answerRow } from "../read/answer-row";
import type { LifterRow } from "../read/table";
import { NO_LIFTERS, plannedCells, readLifters, type ResultCell } from "./cell";

const HEADS = ["Week", "Starts", "Weeks to meet", "Mesocycle", "Kind", "Squat", "Bench", "Deadlift"] as const;

export function listWeeks(row: unknown, headings: unknown): ResultCell[][] {
  const lifters = readLifters(row, headings).rows.filter((each): each is LifterRow => each.kind === "lifter");
  const [lifter] = lifters;
  if (lifter === undefined) return [[NO_LIFTERS]];
  if (lifters.length > 1) return [[`Row: given ${lifters.length} lifters; allowed: one lifter's row.`]];
  const weeks: ResultCell[][] = [];
  const reason = plannedCells(answerRow(lifter, { brief: true }), ({ plan }) => {
    for (const { week, startDate, weeksToMeet, mesocycle, kind, phase } of plan.weeks) {
      const phases = LIFTS.map((lift) => phase?.[lift] ?? "");
      weeks.push([week, startDate, weeksToMeet, mesocycle ?? "", kind, ...phases]);
    }
    return [];
  });
  return weeks.length > 0 ? [[...HEADS], ...weeks] : [[...reason]];
}

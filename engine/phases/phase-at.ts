import type { PhaseWeeks } from "../why";
import type { Phase } from "../words";

/** The phase of a directed week, counted from 1. */
export function phaseAt(split: PhaseWeeks, directedWeek: number): Phase {
  if (directedWeek <= split.hypertrophy) return "hypertrophy";
  return directedWeek <= split.hypertrophy + split.strength ? "strength" : "peaking";
}

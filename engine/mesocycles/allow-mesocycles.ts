/** Rule M1: how long a mesocycle may be, and what each length costs against the lifter's own hard weeks. */
import { COSTS, M1, type CostRow } from "../rules/model";

/** A cost line: how many weeks of which cost. */
export interface RhythmCost {
  readonly rule: CostRow;
  readonly weeks: number;
}

/** Hard weeks that M1 allows in a mesocycle. Without `held`, every length from one week on. */
export function allowHardWeeks(
  hardWeeks: number,
  tolerance: number,
  isFinal: boolean,
  held: boolean,
  longest: number,
): readonly number[] {
  const least = held ? (isFinal ? M1.min : Math.max(M1.min, hardWeeks - tolerance)) : isFinal ? 0 : 1;
  const most = held ? Math.min(M1.max, hardWeeks + tolerance) : longest;
  return Array.from({ length: Math.max(0, most - least + 1) }, (_, index) => least + index);
}

/** What a mesocycle of `length` hard weeks costs beside the lifter's `hardWeeks`. */
export function costRhythm(length: number, hardWeeks: number, isFinal: boolean): RhythmCost {
  const isShorterFinal = isFinal && length < hardWeeks;
  return { rule: isShorterFinal ? COSTS.finalShorter : COSTS.rhythm, weeks: Math.abs(length - hardWeeks) };
}

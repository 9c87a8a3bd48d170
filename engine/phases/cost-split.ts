/** What a lift's split of the preparation costs by itself: away from target, outside the usual range, short of exposures. */
import { COSTS, COST_PARTS, SPREAD, type CostRow } from "../rules/model";
import { WRITTEN_FOR_WEEKS } from "../rules/phases";
import type { CostItem, PhaseWeeks } from "../why";
import { PHASES, type Arrangement, type Lift } from "../words";
import { missingExposures, type ExposureNeed } from "./need-exposures";
import { type LiftTargets } from "./set-targets";

/** One week's cost of 1 in whole search units: tenths of a week scaled from a twelve-week preparation. */
const WEEK_UNITS = 10 * WRITTEN_FOR_WEEKS;
export const COST_UNITS = COST_PARTS * WEEK_UNITS;

/** Whole search units for `amount` weeks (in WEEK_UNITS) at a row's weight. */
const units = (row: CostRow, weekUnits: number): number => Math.round(row.weight * COST_PARTS) * weekUnits;

/** Whole search units for a whole number of weeks, changes or exposures. */
export const wholeUnits = (row: CostRow, count: number): number => units(row, count * WEEK_UNITS);

interface Amounts {
  readonly away: number;
  readonly outside: number;
}

/** How far a split is from its targets and outside its ranges, in WEEK_UNITS. */
function measure(split: PhaseWeeks, targets: LiftTargets, directedWeeks: number): Amounts {
  let away = 0;
  let outside = 0;
  for (const phase of PHASES) {
    const { targetTenths, lowWeeks, highWeeks } = targets.phases[phase];
    const weeks = split[phase] * WEEK_UNITS;
    away += Math.abs(weeks - targetTenths * directedWeeks);
    outside += Math.max(0, lowWeeks * 10 * directedWeeks - weeks, weeks - highWeeks * 10 * directedWeeks);
  }
  return { away, outside };
}

const targetFactor = (arrangement: Arrangement): number => (arrangement === "spread" ? SPREAD.factor : 1);

/** The split's own cost in search units. */
export function costSplit(
  split: PhaseWeeks,
  targets: LiftTargets,
  need: ExposureNeed,
  directedWeeks: number,
  arrangement: Arrangement,
): number {
  const { away, outside } = measure(split, targets, directedWeeks);
  return (
    units(COSTS.target, away) * targetFactor(arrangement) +
    units(COSTS.outside, outside) +
    wholeUnits(COSTS.exposure, missingExposures(need, split.peaking))
  );
}

/** The same cost as lines a coach can read. */
export function itemiseSplit(
  lift: Lift,
  split: PhaseWeeks,
  targets: LiftTargets,
  need: ExposureNeed,
  directedWeeks: number,
  arrangement: Arrangement,
): CostItem[] {
  const { away, outside } = measure(split, targets, directedWeeks);
  const missing = missingExposures(need, split.peaking);
  const line = (rule: CostRow, weeks: number, factor: number): CostItem => ({
    rule,
    lift,
    weeks,
    cost: weeks * rule.weight * factor,
  });
  return [
    line(COSTS.target, away / WEEK_UNITS, targetFactor(arrangement)),
    line(COSTS.outside, outside / WEEK_UNITS, 1),
    line(COSTS.exposure, missing, 1),
  ].filter((item) => item.weeks > 0);
}

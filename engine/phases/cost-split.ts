/** What a lift's split of the preparation costs by itself: away from target, outside the usual range, short of exposures. */
import { COSTS, COST_PARTS, SPREAD, type CostRow } from "../rules/model";
import { WRITTEN_FOR_WEEKS } from "../rules/phases";
import type { CostItem, PhaseWeeks } from "../why";
import type { Arrangement, Lift } from "../words";
import { missingExposures, type ExposureNeed } from "./need-exposures";
import type { LiftTargets, PhaseTarget } from "./set-targets";

/** Parts of a week in which every scaled target is a whole number: tenths of a week of a twelve-week preparation. */
const WEEK_PARTS = 10 * WRITTEN_FOR_WEEKS;

/** A cost of 1 in the whole units of the search. */
export const COST_UNITS = COST_PARTS * WEEK_PARTS;

const partWeight = (row: CostRow): number => Math.round(row.weight * COST_PARTS);

/** Search units for a whole number of weeks, changes or exposures at a row's weight. */
export const wholeUnits = (row: CostRow, count: number): number => partWeight(row) * count * WEEK_PARTS;

/** One lift's targets for a preparation of one length, and what to count against them. */
export interface SplitTerms {
  readonly targets: LiftTargets;
  readonly need: ExposureNeed;
  readonly directedWeeks: number;
  readonly arrangement: Arrangement;
}

/** Week parts that `weeks` of a phase are from the target, and outside the usual range. */
const partsAway = (weeks: number, target: PhaseTarget, directedWeeks: number): number =>
  Math.abs(weeks * WEEK_PARTS - target.targetTenths * directedWeeks);
const partsOutside = (weeks: number, target: PhaseTarget, directedWeeks: number): number =>
  Math.max(
    0,
    target.lowWeeks * 10 * directedWeeks - weeks * WEEK_PARTS,
    weeks * WEEK_PARTS - target.highWeeks * 10 * directedWeeks,
  );

const targetFactor = (arrangement: Arrangement): number => (arrangement === "spread" ? SPREAD.factor : 1);

function measure(split: PhaseWeeks, { targets, need, directedWeeks }: SplitTerms) {
  const { hypertrophy, strength, peaking } = targets.phases;
  return {
    away:
      partsAway(split.hypertrophy, hypertrophy, directedWeeks) +
      partsAway(split.strength, strength, directedWeeks) +
      partsAway(split.peaking, peaking, directedWeeks),
    outside:
      partsOutside(split.hypertrophy, hypertrophy, directedWeeks) +
      partsOutside(split.strength, strength, directedWeeks) +
      partsOutside(split.peaking, peaking, directedWeeks),
    missing: missingExposures(need, split.peaking),
  };
}

/** The split's own cost in search units. */
export function costSplit(split: PhaseWeeks, terms: SplitTerms): number {
  const { away, outside, missing } = measure(split, terms);
  return (
    partWeight(COSTS.target) * away * targetFactor(terms.arrangement) +
    partWeight(COSTS.outside) * outside +
    wholeUnits(COSTS.exposure, missing)
  );
}

/** The same cost as lines a coach can read. */
export function itemiseSplit(lift: Lift, split: PhaseWeeks, terms: SplitTerms): CostItem[] {
  const { away, outside, missing } = measure(split, terms);
  const lines: CostItem[] = [];
  const add = (rule: CostRow, weeks: number, factor: number) => {
    if (weeks > 0) lines.push({ rule, lift, weeks, cost: weeks * rule.weight * factor });
  };
  add(COSTS.target, away / WEEK_PARTS, targetFactor(terms.arrangement));
  add(COSTS.outside, outside / WEEK_PARTS, 1);
  add(COSTS.exposure, missing, 1);
  return lines;
}

/** The planning problem for one length of preparation, stated for the search, and its answers read back. */
import { allowHardWeeks, costRhythm } from "./mesocycles/allow-mesocycles";
import { allowSplits, boundPhases } from "./phases/bound-phases";
import { COST_UNITS, costSplit, itemiseSplit, wholeUnits, type SplitTerms } from "./phases/cost-split";
import { phaseAt } from "./phases/phase-at";
import type { ExposureNeed } from "./phases/need-exposures";
import type { Lifter, LiftTargets } from "./phases/set-targets";
import type { Pins } from "./pins";
import { COSTS, type CostRow, type ModelRuleId } from "./rules/model";
import type { Cuts, Partition, PartitionProblem } from "./search/partition";
import type { CostItem, PhaseWeeks } from "./why";
import { perLift, type Arrangement, type Lift, type PerLift } from "./words";

/** What the search needs to know of a lifter and of what the coach set. */
export interface Terms {
  readonly lifter: Lifter;
  readonly hardWeeks: number;
  readonly tolerance: number;
  readonly arrangement: Arrangement;
  readonly targets: PerLift<LiftTargets>;
  readonly exposures: PerLift<ExposureNeed>;
  readonly pins: Pins;
  /** Weeks of directed preparation that could be used: weeks below it are charged. */
  readonly usableWeeks: number;
  /** Rules of the model that are not held. */
  readonly givenUp: ReadonlySet<ModelRuleId>;
}

/** Search order: ties go to the squat's boundaries first, then the deadlift's, then the bench's. */
export const TRACK_ORDER: readonly Lift[] = ["squat", "deadlift", "bench"];

/** States the problem of a preparation of `directedWeeks`; null where a pin rules that length out. */
export function stateProblem(terms: Terms, directedWeeks: number): PartitionProblem | null {
  const { pins } = terms;
  const ends = pinEnds(terms, directedWeeks);
  if (ends === null || pins.weekPhases.some((pin) => pin.weeksToMeet >= directedWeeks)) return null;
  const held = { M3: !terms.givenUp.has("M3"), M4: !terms.givenUp.has("M4") };
  const splits = allowSplits(directedWeeks, boundPhases(directedWeeks, terms.lifter, held));
  return {
    length: directedWeeks,
    baseCost: wholeUnits(COSTS.unusedWeek, Math.max(0, terms.usableWeeks - directedWeeks)),
    sizes: sizeCosts(terms, directedWeeks, false),
    lastSizes: sizeCosts(terms, directedWeeks, true),
    growthCost: wholeUnits(COSTS.longerThanBefore, 1),
    fixedSizes: new Map(pins.mesocycles.map((pin) => [pin.number - 1, pin.hardWeeks + 1])),
    ends,
    tracks: TRACK_ORDER.map((lift) => stateTrack(terms, lift, directedWeeks, splits)),
    misalignedCost: wholeUnits(COSTS.changeInside, 1),
    tie: terms.arrangement === "together" ? "same" : terms.givenUp.has("M5") ? "free" : "overlap",
  };
}

function sizeCost(terms: Terms, hardWeeks: number, isFinal: boolean): number {
  const { rule, weeks } = costRhythm(hardWeeks, terms.hardWeeks, isFinal);
  return wholeUnits(rule, weeks);
}

function sizeCosts(terms: Terms, directedWeeks: number, isFinal: boolean): Map<number, number> {
  const held = !terms.givenUp.has("M1");
  const lengths = allowHardWeeks(terms.hardWeeks, terms.tolerance, isFinal, held, directedWeeks - 1);
  return new Map(lengths.map((length) => [length + 1, sizeCost(terms, length, isFinal)]));
}

function stateTrack(terms: Terms, lift: Lift, directedWeeks: number, splits: readonly PhaseWeeks[]): Cuts[] {
  const phaseWeeks = terms.pins.phaseWeeks.filter((pin) => pin.lift === lift);
  const weekPhases = terms.pins.weekPhases.filter((pin) => pin.lift === lift);
  const isPinned = phaseWeeks.length + weekPhases.length > 0;
  const kept = !isPinned
    ? splits
    : splits.filter(
        (split) =>
          phaseWeeks.every((pin) => split[pin.phase] === pin.weeks) &&
          weekPhases.every((pin) => phaseAt(split, directedWeeks - pin.weeksToMeet) === pin.phase),
      );
  const splitTerms = termsOfLift(terms, lift, directedWeeks);
  return kept.map((split) => ({
    first: split.hypertrophy,
    second: split.hypertrophy + split.strength,
    cost: costSplit(split, splitTerms),
  }));
}

function termsOfLift(terms: Terms, lift: Lift, directedWeeks: number): SplitTerms {
  return {
    targets: terms.targets[lift],
    need: terms.exposures[lift],
    directedWeeks,
    arrangement: terms.arrangement,
  };
}

/** Where mesocycles must or must not end; null where a bridge or directed week is pinned on the other's side. */
function pinEnds(terms: Terms, directedWeeks: number): Map<number, boolean> | null {
  const ends = new Map<number, boolean>();
  for (const { weeksToMeet, kind } of terms.pins.weekKinds) {
    const place = directedWeeks - weeksToMeet;
    if (kind === "bridge" ? place >= 1 : place < 1) return null;
    if (kind !== "bridge") ends.set(place, kind === "deload");
  }
  return ends;
}

/** A partition in the trade's words. */
export interface Preparation {
  readonly directedWeeks: number;
  readonly hardWeeks: readonly number[];
  readonly lifts: PerLift<PhaseWeeks>;
  readonly cost: number;
  readonly costs: readonly CostItem[];
}

export function readPartition(terms: Terms, partition: Partition): Preparation {
  const directedWeeks = partition.problem.length;
  const lifts = perLift((lift): PhaseWeeks => {
    const { first, second } = partition.cuts[TRACK_ORDER.indexOf(lift)]!;
    return { hypertrophy: first, strength: second - first, peaking: directedWeeks - second };
  });
  const hardWeeks = partition.parts.map((size) => size - 1);
  return {
    directedWeeks,
    hardWeeks,
    lifts,
    cost: partition.cost / COST_UNITS,
    costs: itemiseCosts(terms, directedWeeks, hardWeeks, lifts),
  };
}

/** Every cost of a preparation, line by line; the lines add up to the search's cost. */
export function itemiseCosts(
  terms: Terms,
  directedWeeks: number,
  hardWeeks: readonly number[],
  lifts: PerLift<PhaseWeeks>,
): readonly CostItem[] {
  const lines: CostItem[] = [];
  const add = (rule: CostRow, weeks: number) => {
    if (weeks > 0) lines.push({ rule, lift: null, weeks, cost: weeks * rule.weight });
  };
  add(COSTS.unusedWeek, terms.usableWeeks - directedWeeks);
  hardWeeks.forEach((length, index) => {
    const { rule, weeks } = costRhythm(length, terms.hardWeeks, index === hardWeeks.length - 1);
    add(rule, weeks);
    if (index > 0) add(COSTS.longerThanBefore, length - hardWeeks[index - 1]!);
  });
  const ends = mesocycleEnds(hardWeeks);
  for (const lift of TRACK_ORDER) lines.push(...itemiseLift(terms, lift, lifts[lift], directedWeeks, ends));
  return lines;
}

/** The costs of one lift's split among mesocycles that end where `ends` says. */
export function itemiseLift(
  terms: Terms,
  lift: Lift,
  split: PhaseWeeks,
  directedWeeks: number,
  ends: ReadonlySet<number>,
): readonly CostItem[] {
  const lines = itemiseSplit(lift, split, termsOfLift(terms, lift, directedWeeks));
  const inside = changesInside(split, ends);
  const rule = COSTS.changeInside;
  return inside === 0 ? lines : [...lines, { rule, lift, weeks: inside, cost: inside * rule.weight }];
}

/** The directed weeks, counted from 1, that end a mesocycle. */
export function mesocycleEnds(hardWeeks: readonly number[]): ReadonlySet<number> {
  let end = 0;
  return new Set(hardWeeks.map((length) => (end += length + 1)));
}

/** Phase changes of a lift that do not follow a deload. */
function changesInside(split: PhaseWeeks, ends: ReadonlySet<number>): number {
  const changes = [split.hypertrophy, split.hypertrophy + split.strength].filter((week) => week > 0);
  return changes.filter((week) => !ends.has(week)).length;
}

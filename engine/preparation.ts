/** The planning problem for one length of preparation, stated for the search, and its answers read back. */
import { allowHardWeeks, costRhythm } from "./mesocycles/allow-mesocycles";
import { allowSplits } from "./phases/bound-phases";
import { COST_UNITS, costSplit, itemiseSplit, wholeUnits } from "./phases/cost-split";
import { phaseAt } from "./phases/phase-at";
import type { ExposureNeed } from "./phases/need-exposures";
import type { Lifter, LiftTargets } from "./phases/set-targets";
import type { Pins } from "./pins";
import { COSTS, type ModelRuleId } from "./rules/model";
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
  return {
    length: directedWeeks,
    baseCost: wholeUnits(COSTS.unusedWeek, Math.max(0, terms.usableWeeks - directedWeeks)),
    sizes: sizeCosts(terms, directedWeeks, false),
    lastSizes: sizeCosts(terms, directedWeeks, true),
    growthCost: wholeUnits(COSTS.longerThanBefore, 1),
    fixedSizes: new Map(
      pins.mesocycles.map((pin) => [
        pin.number - 1,
        {
          size: pin.hardWeeks + 1,
          cost: sizeCost(terms, pin.hardWeeks, false),
          lastCost: sizeCost(terms, pin.hardWeeks, true),
        },
      ]),
    ),
    ends,
    tracks: TRACK_ORDER.map((lift) => stateTrack(terms, lift, directedWeeks)),
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

function stateTrack(terms: Terms, lift: Lift, directedWeeks: number): Cuts[] {
  const held = { M3: !terms.givenUp.has("M3"), M4: !terms.givenUp.has("M4") };
  const phaseWeeks = terms.pins.phaseWeeks.filter((pin) => pin.lift === lift);
  const weekPhases = terms.pins.weekPhases.filter((pin) => pin.lift === lift);
  return allowSplits(directedWeeks, terms.lifter, held)
    .filter((split) => phaseWeeks.every((pin) => split[pin.phase] === pin.weeks))
    .filter((split) =>
      weekPhases.every((pin) => phaseAt(split, directedWeeks - pin.weeksToMeet) === pin.phase),
    )
    .map((split) => ({
      first: split.hypertrophy,
      second: split.hypertrophy + split.strength,
      cost: costSplit(split, terms.targets[lift], terms.exposures[lift], directedWeeks, terms.arrangement),
    }));
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
  const add = (rule: CostItem["rule"] & { weight: number }, lift: Lift | null, weeks: number) => {
    if (weeks > 0) lines.push({ rule, lift, weeks, cost: weeks * rule.weight });
  };
  add(COSTS.unusedWeek, null, terms.usableWeeks - directedWeeks);
  const ends = new Set<number>();
  hardWeeks.forEach((length, index) => {
    const { rule, weeks } = costRhythm(length, terms.hardWeeks, index === hardWeeks.length - 1);
    add(rule, null, weeks);
    if (index > 0) add(COSTS.longerThanBefore, null, length - hardWeeks[index - 1]!);
    ends.add([...ends].reduce((last, end) => Math.max(last, end), 0) + length + 1);
  });
  for (const lift of TRACK_ORDER) {
    const split = lifts[lift];
    lines.push(
      ...itemiseSplit(
        lift,
        split,
        terms.targets[lift],
        terms.exposures[lift],
        directedWeeks,
        terms.arrangement,
      ),
    );
    add(COSTS.changeInside, lift, changesInside(split, ends));
  }
  return lines;
}

/** Phase changes of a lift that do not follow a deload. */
export function changesInside(split: PhaseWeeks, mesocycleEnds: ReadonlySet<number>): number {
  const changes = [split.hypertrophy, split.hypertrophy + split.strength].filter((week) => week > 0);
  return changes.filter((week) => !mesocycleEnds.has(week)).length;
}

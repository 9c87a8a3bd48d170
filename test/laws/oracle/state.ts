/**
 * The planning model for one length of preparation, as an integer programme. Places are counted in weeks left:
 * mesocycles are a path of arcs from all weeks left down to none, and each lift has two boundaries, the weeks left when
 * strength begins (all of them when there is no hypertrophy) and when peaking begins.
 */
import { COSTS, M1, M3, M4, SPREAD } from "../../../engine/rules/model";
import { WRITTEN_FOR_WEEKS } from "../../../engine/rules/phases";
import { LIFTS, type Lift } from "../../../engine/words";
import type { Instance } from "./instance";
import { Programme, sumOf, type Sum } from "./programme";

/** Weeks of each mesocycle, first to last. */
export type Pattern = readonly number[];

/**
 * States the problem for a preparation of `length` weeks.
 * @param forbidden a pattern of mesocycles that the answer must differ from
 */
export function stateProgramme(instance: Instance, length: number, forbidden?: Pattern): Programme {
  const programme = new Programme();
  const unused = programme.binary(
    "prepared",
    Math.max(0, instance.usable - length) * COSTS.unusedWeek.weight,
  );
  programme.hold(sumOf([1, unused]), 1, 1);
  const starts = stateMesocycles(programme, instance, length);
  const boundaries = LIFTS.map((lift) => stateLift(programme, instance, length, starts, lift));
  for (const one of boundaries) {
    for (const other of boundaries) {
      if (one !== other) programme.hold(sumOf([1, one.strengthOn], [-1, other.peaking]), 0, Infinity);
    }
  }
  if (instance.arrangement === "together") {
    const [lead, ...others] = boundaries;
    for (const other of others) {
      programme.hold(sumOf([1, lead!.strengthOn], [-1, other.strengthOn]), 0, 0);
      programme.hold(sumOf([1, lead!.peaking], [-1, other.peaking]), 0, 0);
    }
  }
  if (forbidden) forbid(programme, length, forbidden);
  return programme;
}

/** Weeks left -> the arcs that start there. */
type Starts = ReadonlyMap<number, Sum>;

/** The name of the mesocycle that starts with so many weeks left and lasts so many weeks, its deload included. */
export const arcName = (left: number, weeks: number): string => `meso_${left}_${weeks}`;

function stateMesocycles(programme: Programme, instance: Instance, length: number): Starts {
  const { hardWeeks, tolerance } = instance;
  const starting = new Map<number, Map<string, number>>();
  const arriving = new Map<number, Map<string, number>>();
  for (let left = 1; left <= length; left++) {
    for (let hard = M1.min; hard <= M1.max && hard + 1 <= left; hard++) {
      const isFinal = hard + 1 === left;
      if (hard > hardWeeks + tolerance || (!isFinal && hard < hardWeeks - tolerance)) continue;
      const weight = isFinal && hard < hardWeeks ? COSTS.finalShorter.weight : COSTS.rhythm.weight;
      const arc = programme.binary(arcName(left, hard + 1), Math.abs(hard - hardWeeks) * weight);
      mapAt(starting, left).set(arc, hard + 1);
      mapAt(arriving, left - hard - 1).set(arc, hard + 1);
    }
  }
  programme.hold(ones(mapAt(starting, length)), 1, 1);
  for (let left = 1; left < length; left++) {
    const [begun, ended] = [mapAt(starting, left), mapAt(arriving, left)];
    programme.hold(sumOf([1, ones(begun)], [-1, ones(ended)]), 0, 0);
    const growth = programme.real(`growth_${left}`, COSTS.longerThanBefore.weight);
    programme.hold(sumOf([1, growth], [1, ended], [-1, begun]), 0, Infinity);
  }
  return new Map([...starting].map(([left, arcs]) => [left, ones(arcs)]));
}

const ones = (variables: ReadonlyMap<string, number>): Sum =>
  new Map([...variables.keys()].map((name) => [name, 1]));

function mapAt(maps: Map<number, Map<string, number>>, at: number): Map<string, number> {
  const found = maps.get(at) ?? new Map<string, number>();
  maps.set(at, found);
  return found;
}

interface Boundaries {
  /** Weeks left when strength begins. */
  readonly strengthOn: Sum;
  /** Weeks left when peaking begins. */
  readonly peaking: Sum;
}

function stateLift(
  programme: Programme,
  instance: Instance,
  length: number,
  starts: Starts,
  lift: Lift,
): Boundaries {
  const { target, low, high, missing } = instance.lifts[lift];
  const scale = length / WRITTEN_FOR_WEEKS;
  const awayWeight = COSTS.target.weight * (instance.arrangement === "spread" ? SPREAD.factor : 1);
  const ownCost = (phase: 0 | 2, weeks: number): number =>
    Math.abs(weeks - target[phase] * scale) * awayWeight +
    Math.max(0, low[phase] * scale - weeks, weeks - high[phase] * scale) * COSTS.outside.weight;
  const up = (pct: number): number => Math.ceil((length * pct) / 100);
  const down = (pct: number): number => Math.floor((length * pct) / 100);

  const isLongPeaker = instance.isVeryAdvanced && instance.isHeavyMan;
  const peakingPct = isLongPeaker ? M4.peaking.maxPctVeryAdvancedHeavyMan : M4.peaking.maxPct;
  const peaking = new Map<string, number>();
  for (let weeks = 1; weeks < length; weeks++) {
    if (weeks < Math.max(instance.leastPeaking, down(M4.peaking.minPct))) continue;
    if (weeks > Math.min(M3.peaking.max, up(peakingPct))) continue;
    const cost = ownCost(2, weeks) + missing(weeks) * COSTS.exposure.weight;
    peaking.set(programme.binary(`${lift}_peaking_${weeks}`, cost), weeks);
  }
  const strengthOn = new Map<string, number>();
  for (let left = 1; left <= length; left++) {
    const weeks = length - left;
    if (weeks > 0 && weeks < M3.hypertrophy.min) continue;
    if (weeks > Math.min(M3.hypertrophy.max, up(M4.hypertrophy.maxPct))) continue;
    strengthOn.set(programme.binary(`${lift}_strength_${left}`, ownCost(0, weeks)), left);
  }
  programme.hold(ones(peaking), 1, 1);
  programme.hold(ones(strengthOn), 1, 1);

  const strength = sumOf([1, strengthOn], [-1, peaking]);
  programme.hold(strength, Math.max(M3.strength.min, down(M4.strength.minPct)), M3.strength.max);
  const further = up(M4.strength.maxPctVeryAdvancedWithoutHypertrophy) - up(M4.strength.maxPct);
  const noHypertrophy = `${lift}_strength_${length}`;
  const extra = instance.isVeryAdvanced ? sumOf([-further, noHypertrophy]) : sumOf();
  programme.hold(sumOf([1, strength], [1, extra]), -Infinity, up(M4.strength.maxPct));
  const away = programme.real(`${lift}_away`, awayWeight);
  programme.hold(sumOf([1, strength], [-1, away]), -Infinity, target[1] * scale);
  programme.hold(sumOf([1, strength], [1, away]), target[1] * scale, Infinity);
  const outside = programme.real(`${lift}_outside`, COSTS.outside.weight);
  programme.hold(sumOf([1, strength], [-1, outside]), -Infinity, high[1] * scale);
  programme.hold(sumOf([1, strength], [1, outside]), low[1] * scale, Infinity);

  for (const [change, places] of [peaking, strengthOn].entries()) {
    const inside = programme.real(`${lift}_inside_${change}`, COSTS.changeInside.weight);
    for (const [name, left] of places) {
      if (left < length)
        programme.hold(sumOf([1, inside], [1, starts.get(left) ?? sumOf()], [-1, name]), 0, Infinity);
      // A deload belongs to the phase it ends: no phase begins in the last week of any mesocycle but the final one.
      if (left < length && left > 1)
        programme.hold(sumOf([1, name], [1, starts.get(left - 1) ?? sumOf()]), -Infinity, 1);
    }
  }
  return { strengthOn, peaking };
}

/** At least one mesocycle must differ. */
function forbid(programme: Programme, length: number, pattern: Pattern): void {
  if (pattern.reduce((sum, weeks) => sum + weeks, 0) !== length) return;
  const taken = new Map<string, number>();
  let left = length;
  for (const weeks of pattern) {
    taken.set(arcName(left, weeks), 1);
    left -= weeks;
  }
  programme.hold(taken, -Infinity, pattern.length - 1);
}

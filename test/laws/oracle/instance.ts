/**
 * A lifter's planning problem as plain numbers, worked out from an answer's request and assessment and from the rule
 * rows alone: none of the engine's stages is called.
 */
import type { Answer, Assessment } from "../../../engine/answer";
import type { PlanRequest } from "../../../engine/request";
import {
  EXPOSURES_BY_LEVEL,
  LIGHT_WOMAN_EXPOSURES,
  SPACING_BY_LEVEL,
  SPACING_BY_LIFT,
  SPACING_BY_SIZE,
} from "../../../engine/rules/exposures";
import * as model from "../../../engine/rules/model";
import * as phases from "../../../engine/rules/phases";
import { LIFTS, type Lift } from "../../../engine/words";

/** Hypertrophy, strength, peaking. */
export type Triple = readonly [number, number, number];

/** One lift in a preparation of twelve weeks. */
export interface LiftNumbers {
  readonly target: Triple;
  readonly low: Triple;
  readonly high: Triple;
  /** Exposures missing when peaking lasts so many weeks. */
  readonly missing: (peakingWeeks: number) => number;
}

export interface Instance {
  readonly available: number;
  /** Lengths to choose from, in the order in which M2 lets them be tried: the first group with any plan counts. */
  readonly lengthGroups: readonly (readonly number[])[];
  readonly usable: number;
  readonly hardWeeks: number;
  readonly tolerance: number;
  readonly arrangement: PlanRequest["arrangement"];
  readonly leastPeaking: number;
  readonly isVeryAdvanced: boolean;
  readonly isHeavyMan: boolean;
  readonly lifts: Readonly<Record<Lift, LiftNumbers>>;
}

const range = (from: number, to: number): number[] =>
  Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => from + i);
/** Weeks from the one that holds `start` to the one that holds `meet`, both counted, in whole UTC days. */
function countWeeks({ startDate, meetDate, weekStart }: PlanRequest): number {
  const names = ["sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"];
  // 1970-01-01 was a Thursday.
  const weekOf = (day: string): number =>
    Math.floor((Date.parse(`${day}T00:00:00Z`) / 86_400_000 + 4 - names.indexOf(weekStart)) / 7);
  return weekOf(meetDate) - weekOf(startDate) + 1;
}

const clamp = (value: number, low: number, high: number): number => Math.max(low, Math.min(high, value));

export function instanceOf({ request, assessment }: Exclude<Answer, { status: "invalid" }>): Instance {
  const available = countWeeks(request);
  const { least, most } = assessment.prepRange;
  const { level, size } = assessment;
  return {
    available,
    lengthGroups: groupLengths(available, least, most, request.prepWeeks),
    usable: request.prepWeeks ?? Math.min(available, most),
    hardWeeks: assessment.hardWeeks,
    tolerance: request.mesocycleTolerance,
    arrangement: request.arrangement,
    leastPeaking:
      level === "beginner" && request.sex === "female" && size === "light"
        ? model.M3.peaking.minLightBeginnerWoman
        : model.M3.peaking.min,
    isVeryAdvanced: level === "very advanced",
    isHeavyMan: request.sex === "male" && size === "heavy",
    lifts: Object.fromEntries(
      LIFTS.map((lift) => [lift, numbersOf(lift, request, assessment)]),
    ) as Instance["lifts"],
  };
}

function groupLengths(available: number, least: number, most: number, set: number | null): number[][] {
  if (set !== null) return set > available ? [] : [[set]];
  if (available <= most) return [[available], range(1, available - 1)];
  return [range(least, most), range(1, least - 1)];
}

function numbersOf(lift: Lift, { sex, roomInClass }: PlanRequest, { level, size }: Assessment): LiftNumbers {
  const row = phases.PHASE_ROWS.filter((each) => each.level === level && each.room === roomInClass)[0]!;
  const special = phases.PEAKING_RANGES.filter(
    (each) => each.level === level && each.sex === sex && each.size === size,
  );
  const peakingRange = special[0]?.peaking ?? row.peaking;
  const shifts = [...phases.LIFT_SHIFTS[lift]];
  if (sex === "female") shifts.push(phases.WOMAN_HYPERTROPHY, phases.WOMAN_PEAKING);
  if (size === "light") shifts.push(phases.LIGHT_PEAKING);
  if (size === "heavy") shifts.push(phases.HEAVY_PEAKING);
  if (level === "very advanced" && sex === "male" && size === "heavy")
    shifts.push(phases.VERY_ADVANCED_HEAVY_MAN_PEAKING);
  const moved = (phase: string): number =>
    shifts.reduce((sum, shift) => (shift.phase === phase ? sum + shift.tenths / 10 : sum), 0);
  const noHypertrophy = row.hypertrophyTenths === 0;
  const hypertrophy = noHypertrophy
    ? 0
    : clamp(row.hypertrophyTenths / 10 + moved("hypertrophy"), row.hypertrophy[0], row.hypertrophy[1]);
  const peaking = clamp(row.peakingTenths / 10 + moved("peaking"), peakingRange[0], peakingRange[1]);
  const strength = clamp(phases.WRITTEN_FOR_WEEKS - hypertrophy - peaking, row.strength[0], row.strength[1]);
  const need =
    EXPOSURES_BY_LEVEL[level].exposures +
    (sex === "female" && size === "light" ? LIGHT_WOMAN_EXPOSURES.exposures : 0);
  const apart = SPACING_BY_LEVEL[level].days + SPACING_BY_SIZE[size].days + SPACING_BY_LIFT[lift].days;
  return {
    target: [hypertrophy, strength, peaking],
    low: [row.hypertrophy[0], row.strength[0], peakingRange[0]],
    high: [row.hypertrophy[1], row.strength[1], peakingRange[1]],
    missing: (weeks) => Math.max(0, need - Math.floor(((weeks - 1) * 7) / apart)),
  };
}

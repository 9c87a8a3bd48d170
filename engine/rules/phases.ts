/**
 * Target weeks and usual ranges of each phase for a 12-week preparation, by level and room in the class.
 * Targets are in tenths of a week; strength takes what hypertrophy and peaking leave, held inside its range.
 */
import type { Level, Lift, Phase, RoomInClass, Sex, Size } from "../words";
import { house, inferred, practice, type RuleRow } from "./sources";

/** The preparation these rows are written for; scaled to others in proportion. */
export const WRITTEN_FOR_WEEKS = 12;

export interface PhaseRow extends RuleRow {
  readonly level: Level;
  readonly room: RoomInClass;
  /** Targets in tenths of a week. */
  readonly hypertrophyTenths: number;
  readonly peakingTenths: number;
  /** Usual range in weeks: [least, most]. */
  readonly hypertrophy: readonly [number, number];
  readonly strength: readonly [number, number];
  readonly peaking: readonly [number, number];
}

const FULL_CLASS = inferred(
  "no hypertrophy is needed in a class that is filled out: its weeks go to strength first, up to 8 of 12",
);

export const PHASE_ROWS: readonly PhaseRow[] = [
  {
    id: "phases.beginner.none",
    level: "beginner",
    room: "none",
    hypertrophyTenths: 50,
    peakingTenths: 25,
    hypertrophy: [5, 6],
    strength: [3, 4],
    peaking: [2, 3],
    ...practice(),
  },
  {
    id: "phases.beginner.some",
    level: "beginner",
    room: "some",
    hypertrophyTenths: 55,
    peakingTenths: 25,
    hypertrophy: [5, 6],
    strength: [3, 4],
    peaking: [2, 3],
    ...practice(),
  },
  {
    id: "phases.beginner.plenty",
    level: "beginner",
    room: "plenty",
    hypertrophyTenths: 60,
    peakingTenths: 25,
    hypertrophy: [5, 6],
    strength: [3, 4],
    peaking: [2, 3],
    ...practice(),
  },
  {
    id: "phases.intermediate.none",
    level: "intermediate",
    room: "none",
    hypertrophyTenths: 30,
    peakingTenths: 40,
    hypertrophy: [3, 5],
    strength: [4, 5],
    peaking: [2, 4],
    ...practice(),
  },
  {
    id: "phases.intermediate.some",
    level: "intermediate",
    room: "some",
    hypertrophyTenths: 45,
    peakingTenths: 30,
    hypertrophy: [4, 5],
    strength: [4, 5],
    peaking: [2, 4],
    ...practice(),
  },
  {
    id: "phases.intermediate.plenty",
    level: "intermediate",
    room: "plenty",
    hypertrophyTenths: 50,
    peakingTenths: 30,
    hypertrophy: [4, 5],
    strength: [4, 5],
    peaking: [2, 4],
    ...practice(),
  },
  {
    id: "phases.advanced.none",
    level: "advanced",
    room: "none",
    hypertrophyTenths: 0,
    peakingTenths: 45,
    hypertrophy: [0, 0],
    strength: [4, 8],
    peaking: [3, 5],
    ...FULL_CLASS,
  },
  {
    id: "phases.advanced.some",
    level: "advanced",
    room: "some",
    hypertrophyTenths: 30,
    peakingTenths: 40,
    hypertrophy: [0, 4],
    strength: [4, 6],
    peaking: [3, 5],
    ...practice(),
  },
  {
    id: "phases.advanced.plenty",
    level: "advanced",
    room: "plenty",
    hypertrophyTenths: 40,
    peakingTenths: 35,
    hypertrophy: [0, 4],
    strength: [4, 6],
    peaking: [3, 5],
    ...practice(),
  },
  {
    id: "phases.veryAdvanced.none",
    level: "very advanced",
    room: "none",
    hypertrophyTenths: 0,
    peakingTenths: 45,
    hypertrophy: [0, 0],
    strength: [4, 8],
    peaking: [3, 5],
    ...practice(),
  },
  {
    id: "phases.veryAdvanced.some",
    level: "very advanced",
    room: "some",
    hypertrophyTenths: 30,
    peakingTenths: 40,
    hypertrophy: [0, 4],
    strength: [4, 8],
    peaking: [3, 5],
    ...practice(),
  },
  {
    id: "phases.veryAdvanced.plenty",
    level: "very advanced",
    room: "plenty",
    hypertrophyTenths: 40,
    peakingTenths: 40,
    hypertrophy: [0, 4],
    strength: [4, 8],
    peaking: [3, 5],
    ...practice(),
  },
];

/** Ranges that replace those above for one kind of lifter. */
export interface PeakingRangeRow extends RuleRow {
  readonly level: Level;
  readonly sex: Sex;
  readonly size: Size;
  readonly peaking: readonly [number, number];
}

export const PEAKING_RANGES: readonly PeakingRangeRow[] = [
  {
    id: "peaking.beginner.lightWoman",
    level: "beginner",
    sex: "female",
    size: "light",
    peaking: [1, 2],
    ...practice(),
  },
  {
    id: "peaking.intermediate.lightWoman",
    level: "intermediate",
    sex: "female",
    size: "light",
    peaking: [2, 2],
    ...practice(),
  },
  {
    id: "peaking.veryAdvanced.heavyMan",
    level: "very advanced",
    sex: "male",
    size: "heavy",
    peaking: [4, 8],
    ...practice(),
  },
];

/** A move of one phase's target, in tenths of a week of twelve. */
export interface ShiftRow extends RuleRow {
  readonly phase: Extract<Phase, "hypertrophy" | "peaking">;
  readonly tenths: number;
}

const HALF_WEEK = house("half a week of twelve: enough to tip the balance, not to rule it");

export const WOMAN_HYPERTROPHY: ShiftRow = {
  id: "shift.woman.hypertrophy",
  phase: "hypertrophy",
  tenths: 5,
  ...HALF_WEEK,
};
export const WOMAN_PEAKING: ShiftRow = {
  id: "shift.woman.peaking",
  phase: "peaking",
  tenths: -5,
  ...HALF_WEEK,
};
export const LIGHT_PEAKING: ShiftRow = {
  id: "shift.light.peaking",
  phase: "peaking",
  tenths: -5,
  ...HALF_WEEK,
};
export const HEAVY_PEAKING: ShiftRow = {
  id: "shift.heavy.peaking",
  phase: "peaking",
  tenths: 5,
  ...HALF_WEEK,
};
export const VERY_ADVANCED_HEAVY_MAN_PEAKING: ShiftRow = {
  id: "shift.veryAdvancedHeavyMan.peaking",
  phase: "peaking",
  tenths: 10,
  ...inferred("six and six of twelve weeks as the middle of what such lifters do"),
};

/** How a lift's targets differ from the lifter's; the hypertrophy rows apply only where the lifter has hypertrophy. */
export const LIFT_SHIFTS: Readonly<Record<Lift, readonly ShiftRow[]>> = {
  squat: [],
  bench: [
    { id: "shift.bench.hypertrophy", phase: "hypertrophy", tenths: 5, ...HALF_WEEK },
    { id: "shift.bench.peaking", phase: "peaking", tenths: -5, ...HALF_WEEK },
  ],
  deadlift: [
    { id: "shift.deadlift.hypertrophy", phase: "hypertrophy", tenths: -5, ...HALF_WEEK },
    { id: "shift.deadlift.peaking", phase: "peaking", tenths: 5, ...HALF_WEEK },
  ],
};

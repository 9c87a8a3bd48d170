/** Each lift's target weeks and usual ranges, for the lifter and for the length of the preparation. */
import {
  HEAVY_PEAKING,
  LIFT_SHIFTS,
  LIGHT_PEAKING,
  PEAKING_RANGES,
  PHASE_ROWS,
  VERY_ADVANCED_HEAVY_MAN_PEAKING,
  WOMAN_HYPERTROPHY,
  WOMAN_PEAKING,
  WRITTEN_FOR_WEEKS,
  type PhaseRow,
  type ShiftRow,
} from "../rules/phases";
import type { RuleRow } from "../rules/sources";
import { assert } from "../outcome";
import {
  PHASES,
  perLift,
  type Level,
  type Lift,
  type PerLift,
  type Phase,
  type RoomInClass,
  type Sex,
  type Size,
} from "../words";

export interface Lifter {
  readonly level: Level;
  readonly size: Size;
  readonly sex: Sex;
  readonly roomInClass: RoomInClass;
}

/** For a preparation of WRITTEN_FOR_WEEKS weeks. */
export interface PhaseTarget {
  readonly targetTenths: number;
  readonly lowWeeks: number;
  readonly highWeeks: number;
}

export interface LiftTargets {
  readonly phases: Readonly<Record<Phase, PhaseTarget>>;
  readonly rules: readonly RuleRow[];
}

/** Sets every lift's targets. */
export function setTargets(lifter: Lifter): PerLift<LiftTargets> {
  const row = PHASE_ROWS.find((r) => r.level === lifter.level && r.room === lifter.roomInClass);
  assert(
    row,
    "no phase row",
    { level: lifter.level, room: lifter.roomInClass },
    "a row is missing in rules/phases.ts",
  );
  return perLift((lift) => setLiftTargets(row, lifter, lift));
}

function setLiftTargets(row: PhaseRow, lifter: Lifter, lift: Lift): LiftTargets {
  const rangeRow = PEAKING_RANGES.find(
    (r) => r.level === lifter.level && r.sex === lifter.sex && r.size === lifter.size,
  );
  const peakingRange = rangeRow?.peaking ?? row.peaking;
  const hasHypertrophy = row.hypertrophyTenths > 0;
  const shifts = shiftsFor(lifter, lift).filter((s) => s.phase === "peaking" || hasHypertrophy);
  const shifted = (
    phase: ShiftRow["phase"],
    from: number,
    [low, high]: readonly [number, number],
  ): number => {
    const moved = shifts.filter((s) => s.phase === phase).reduce((sum, s) => sum + s.tenths, from);
    return Math.min(high * 10, Math.max(low * 10, moved));
  };
  const hypertrophy = shifted("hypertrophy", row.hypertrophyTenths, row.hypertrophy);
  const peaking = shifted("peaking", row.peakingTenths, peakingRange);
  const rest = WRITTEN_FOR_WEEKS * 10 - hypertrophy - peaking;
  const strength = Math.min(row.strength[1] * 10, Math.max(row.strength[0] * 10, rest));
  const target = (targetTenths: number, range: readonly [number, number]): PhaseTarget => ({
    targetTenths,
    lowWeeks: range[0],
    highWeeks: range[1],
  });
  return {
    phases: {
      hypertrophy: target(hypertrophy, row.hypertrophy),
      strength: target(strength, row.strength),
      peaking: target(peaking, peakingRange),
    },
    rules: [row, ...(rangeRow ? [rangeRow] : []), ...shifts],
  };
}

function shiftsFor(lifter: Lifter, lift: Lift): readonly ShiftRow[] {
  const isHeavyMan = lifter.sex === "male" && lifter.size === "heavy";
  return [
    ...(lifter.sex === "female" ? [WOMAN_HYPERTROPHY, WOMAN_PEAKING] : []),
    ...(lifter.size === "light" ? [LIGHT_PEAKING] : []),
    ...(lifter.size === "heavy" ? [HEAVY_PEAKING] : []),
    ...(lifter.level === "very advanced" && isHeavyMan ? [VERY_ADVANCED_HEAVY_MAN_PEAKING] : []),
    ...LIFT_SHIFTS[lift],
  ];
}

/** A target scaled to a preparation of `directedWeeks`, in weeks and parts of a week. */
export function scaleTarget(
  target: PhaseTarget,
  directedWeeks: number,
): { target: number; low: number; high: number } {
  const scale = directedWeeks / WRITTEN_FOR_WEEKS;
  return {
    target: (target.targetTenths / 10) * scale,
    low: target.lowWeeks * scale,
    high: target.highWeeks * scale,
  };
}

/** Every lift's target weeks scaled to the preparation. */
export function scaleTargets(
  targets: PerLift<LiftTargets>,
  directedWeeks: number,
): PerLift<Readonly<Record<Phase, number>>> {
  return perLift((lift) => {
    const weeks = (phase: Phase) => scaleTarget(targets[lift].phases[phase], directedWeeks).target;
    return Object.fromEntries(PHASES.map((phase) => [phase, weeks(phase)])) as Record<Phase, number>;
  });
}

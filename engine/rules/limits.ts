/** What a request's fields accept, and from where on a value is questioned. */
import { house, type RuleRow } from "./sources";

export interface LimitRow extends RuleRow {
  readonly min: number;
  readonly max: number;
}

const TYPING = house("wide enough for every lifter, narrow enough to catch a slip of typing");

export const LIMITS = {
  bodyweightKg: { id: "limits.bodyweight", min: 25, max: 300, ...TYPING },
  classLimitKg: { id: "limits.classLimit", min: 25, max: 300, ...TYPING },
  trainingYears: { id: "limits.trainingYears", min: 0, max: 80, ...TYPING },
  liftKg: {
    id: "limits.lift",
    min: 1,
    max: 10000,
    ...house("an absurd lift is questioned below, not refused"),
  },
  hardWeeks: { id: "limits.hardWeeks", min: 2, max: 6, ...house("the range of M1") },
  prepWeeks: {
    id: "limits.prepWeeks",
    min: 3,
    max: 41,
    ...house("one short mesocycle at least; the longest phases of M3 at most"),
  },
  mesocycleTolerance: { id: "limits.mesocycleTolerance", min: 0, max: 4, ...house("the span of M1") },
  phaseWeeks: { id: "limits.phaseWeeks", min: 0, max: 41, ...house("the longest preparation") },
  lifterLength: {
    id: "limits.lifterLength",
    min: 0,
    max: 100,
    ...house("longer names are cut where they would not fit; questioned"),
  },
  horizonWeeks: {
    id: "limits.horizonWeeks",
    min: 1,
    max: 156,
    ...house("three years: a meet further out is a slip of typing"),
  },
} as const satisfies Record<string, LimitRow>;

/** A best above this is questioned, never refused. Kilograms. */
export const UNUSUAL_ABOVE = {
  squatKg: { id: "unusual.squat", kg: 450, ...house("beyond nearly every unequipped result") },
  benchKg: { id: "unusual.bench", kg: 300, ...house("beyond nearly every unequipped result") },
  deadliftKg: { id: "unusual.deadlift", kg: 430, ...house("beyond nearly every unequipped result") },
} as const;

/** A lift whose share of the total lies outside this is questioned. Per cent of the total. */
export const UNUSUAL_SHARE = {
  id: "unusual.share",
  minPct: 14,
  maxPct: 55,
  ...house(
    "well outside the 5th to 95th percentile of each lift's share in open meet results (16.5 to 48.9 %)",
  ),
} as const;

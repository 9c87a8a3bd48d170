/** A lifter's level: by years of training, by strength among competitors, and how the two are held together. */
import type { Level } from "../words";
import { house, inferred, practice, type RuleRow } from "./sources";

export interface YearsRow extends RuleRow {
  readonly level: Level;
  /** From this many years of training… */
  readonly min: number;
  /** …to less than this. */
  readonly below: number;
}

export const YEARS: readonly YearsRow[] = [
  { id: "level.years.beginner", level: "beginner", min: 0, below: 2, ...house("a lifter's first two years") },
  {
    id: "level.years.intermediate",
    level: "intermediate",
    min: 2,
    below: 5,
    ...house("between the rows beside it"),
  },
  {
    id: "level.years.advanced",
    level: "advanced",
    min: 5,
    below: 10,
    ...inferred("up to the very advanced lifter's ten years"),
  },
  { id: "level.years.veryAdvanced", level: "very advanced", min: 10, below: Infinity, ...practice() },
];

export interface StrengthRow extends RuleRow {
  readonly level: Level;
  /** From this percentile of DOTS… */
  readonly min: number;
  /** …to less than this. */
  readonly below: number;
}

const BANDS = house(
  "bands over the percentiles of open meet results: competitors only, so a beginner stands low among them",
);

export const STRENGTH: readonly StrengthRow[] = [
  { id: "level.strength.beginner", level: "beginner", min: 0, below: 20, ...BANDS },
  { id: "level.strength.intermediate", level: "intermediate", min: 20, below: 50, ...BANDS },
  { id: "level.strength.advanced", level: "advanced", min: 50, below: 80, ...BANDS },
  { id: "level.strength.veryAdvanced", level: "very advanced", min: 80, below: Infinity, ...BANDS },
];

export const WITHIN_YEARS = {
  id: "level.withinYears",
  steps: 1,
  ...house("strength can run ahead of the years or behind them, by one step at most"),
} as const;

export const VERY_ADVANCED_NEEDS_BOTH = { id: "level.veryAdvancedNeedsBoth", ...practice() } as const;

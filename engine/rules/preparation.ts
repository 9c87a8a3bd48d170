/** Weeks of directed preparation a lifter can make good use of, and the weeks around it. */
import type { Level, Size } from "../words";
import { house, inferred, practice, type RuleRow } from "./sources";

export interface PrepRangeRow extends RuleRow {
  readonly level: Level;
  readonly size: Size;
  readonly min: number;
  readonly max: number;
}

const BETWEEN = inferred(
  "between 8 to 14 weeks for bigger, more advanced lifters and 12 to 24 for smaller, less advanced ones",
);

export const PREP_RANGE: readonly PrepRangeRow[] = [
  { id: "prep.beginner.light", level: "beginner", size: "light", min: 12, max: 24, ...practice() },
  { id: "prep.beginner.middle", level: "beginner", size: "middle", min: 12, max: 24, ...practice() },
  { id: "prep.beginner.heavy", level: "beginner", size: "heavy", min: 12, max: 20, ...BETWEEN },
  { id: "prep.intermediate.light", level: "intermediate", size: "light", min: 12, max: 24, ...practice() },
  { id: "prep.intermediate.middle", level: "intermediate", size: "middle", min: 11, max: 20, ...BETWEEN },
  { id: "prep.intermediate.heavy", level: "intermediate", size: "heavy", min: 10, max: 18, ...BETWEEN },
  { id: "prep.advanced.light", level: "advanced", size: "light", min: 10, max: 18, ...BETWEEN },
  { id: "prep.advanced.middle", level: "advanced", size: "middle", min: 9, max: 16, ...BETWEEN },
  { id: "prep.advanced.heavy", level: "advanced", size: "heavy", min: 8, max: 14, ...practice() },
  { id: "prep.veryAdvanced.light", level: "very advanced", size: "light", min: 8, max: 16, ...BETWEEN },
  { id: "prep.veryAdvanced.middle", level: "very advanced", size: "middle", min: 8, max: 14, ...practice() },
  { id: "prep.veryAdvanced.heavy", level: "very advanced", size: "heavy", min: 8, max: 14, ...practice() },
];

/** A bridge longer than this many weeks is pointed out. */
export const LONG_BRIDGE = {
  id: "prep.longBridge",
  weeks: 8,
  ...house("about two mesocycles: general work that long wants its own deloads"),
} as const;

/** A first week with fewer training days left than this is pointed out; so is a meet week with fewer days before the meet. */
export const PARTIAL_WEEK = {
  id: "prep.partialWeek",
  days: 4,
  ...house("less than this is not much of a training week"),
} as const;

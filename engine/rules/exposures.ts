/** Heavy exposures a peaking phase should hold, and how many days each takes. */
import type { Level, Lift, Size } from "../words";
import { house, inferred, type RuleRow } from "./sources";

export interface ExposuresRow extends RuleRow {
  readonly exposures: number;
}

const FEWER_FOR_LESS = house(
  "stronger lifters need more exposures to the weights of the day; common practice gives the direction, not the number",
);

export const EXPOSURES_BY_LEVEL: Readonly<Record<Level, ExposuresRow>> = {
  beginner: { id: "exposures.beginner", exposures: 1, ...FEWER_FOR_LESS },
  intermediate: { id: "exposures.intermediate", exposures: 2, ...FEWER_FOR_LESS },
  advanced: { id: "exposures.advanced", exposures: 3, ...FEWER_FOR_LESS },
  "very advanced": { id: "exposures.veryAdvanced", exposures: 4, ...FEWER_FOR_LESS },
};

export const LIGHT_WOMAN_EXPOSURES: ExposuresRow = {
  id: "exposures.lightWoman",
  exposures: -1,
  ...FEWER_FOR_LESS,
};

export interface SpacingRow extends RuleRow {
  readonly days: number;
}

const EVERY = inferred("four exposures take 16 days at every fourth day and 24 at every sixth");

export const SPACING_BY_LEVEL: Readonly<Record<Level, SpacingRow>> = {
  beginner: { id: "spacing.beginner", days: 4, ...EVERY },
  intermediate: { id: "spacing.intermediate", days: 4, ...EVERY },
  advanced: { id: "spacing.advanced", days: 5, ...EVERY },
  "very advanced": { id: "spacing.veryAdvanced", days: 5, ...EVERY },
};
export const SPACING_BY_SIZE: Readonly<Record<Size, SpacingRow>> = {
  light: { id: "spacing.light", days: 0, ...EVERY },
  middle: { id: "spacing.middle", days: 0, ...EVERY },
  heavy: { id: "spacing.heavy", days: 1, ...EVERY },
};
export const SPACING_BY_LIFT: Readonly<Record<Lift, SpacingRow>> = {
  squat: { id: "spacing.squat", days: 0, ...EVERY },
  bench: { id: "spacing.bench", days: -1, ...house("the bench recovers soonest") },
  deadlift: { id: "spacing.deadlift", days: 0, ...EVERY },
};

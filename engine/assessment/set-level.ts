/** The lifter's level: strength among competitors, held near the years of training; the coach may set another. */
import { assert } from "../outcome";
import { STRENGTH, VERY_ADVANCED_NEEDS_BOTH, WITHIN_YEARS, YEARS, type YearsRow } from "../rules/levels";
import type { RuleRow } from "../rules/sources";
import type { Decision } from "../why";
import { LEVELS, type Level } from "../words";

export interface Levelled {
  readonly level: Level;
  /** What the assessment alone gives. */
  readonly assessed: Level;
  readonly decisions: readonly Decision[];
}

function rowAt<T extends { min: number; below: number }>(rows: readonly T[], value: number): T {
  const row = rows.find((each) => value >= each.min && value < each.below);
  assert(row, "no row holds the value", { value }, "the rows of rules/levels.ts leave a gap");
  return row;
}

export function setLevel(trainingYears: number, percentile: number | null, set: Level | null): Levelled {
  const years: YearsRow = rowAt(YEARS, trainingYears);
  const strength = percentile === null ? null : rowAt(STRENGTH, percentile);
  const rank = (level: Level) => LEVELS.indexOf(level);
  const rules: RuleRow[] = [years];
  let assessed: Level = years.level;
  if (strength) {
    rules.push(strength);
    const [low, high] = [rank(years.level) - WITHIN_YEARS.steps, rank(years.level) + WITHIN_YEARS.steps];
    const held = Math.min(high, Math.max(low, rank(strength.level)));
    if (held !== rank(strength.level)) rules.push(WITHIN_YEARS);
    assessed = LEVELS[held]!;
  }
  const isBoth = years.level === "very advanced" && strength?.level === "very advanced";
  if (assessed === "very advanced" && !isBoth) {
    rules.push(VERY_ADVANCED_NEEDS_BOTH);
    assessed = "advanced";
  }
  const level = set ?? assessed;
  const weighed = [assessed, years.level, ...(strength ? [strength.level] : [])];
  return {
    level,
    assessed,
    decisions: [
      {
        about: "level",
        value: level,
        rules,
        given: {
          byStrength: strength?.level ?? null,
          byYears: years.level,
          trainingYears,
          set: set !== null,
        },
        rejected: LEVELS.filter((other) => other !== level && weighed.includes(other)),
      },
    ],
  };
}

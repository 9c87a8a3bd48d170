/** How strong the lifter is among competitors of the same sex: the percentile of the best total's DOTS. */
import { DOTS_PERCENTILES } from "../rules/percentiles";
import { DOTS_ROWS } from "../rules/points";
import type { RuleRow } from "../rules/sources";
import type { Decision } from "../why";
import { LIFTS, type Lift, type PerLift, type Sex } from "../words";
import { dotsPercentile } from "./percentile";
import { dotsPoints } from "./points";

export interface Rated {
  /** The three below are null unless all three bests are known. */
  readonly totalKg: number | null;
  readonly dots: number | null;
  readonly percentile: number | null;
  readonly missing: readonly Lift[];
  readonly decisions: readonly Decision[];
}

export function rateStrength(sex: Sex, bodyweightKg: number, bestsKg: PerLift<number | null>): Rated {
  const missing = LIFTS.filter((lift) => bestsKg[lift] === null);
  const totalKg = missing.length > 0 ? null : LIFTS.reduce((sum, lift) => sum + (bestsKg[lift] ?? 0), 0);
  const dots = totalKg === null ? null : dotsPoints(sex, bodyweightKg, totalKg);
  const percentile = dots === null ? null : dotsPercentile(sex, dots);
  const rules: RuleRow[] = [...DOTS_ROWS, ...DOTS_PERCENTILES].filter((row) => row.sex === sex);
  return {
    totalKg,
    dots,
    percentile,
    missing,
    decisions: [
      { about: "strength", value: percentile, rules, given: { totalKg, dots, missing, sex }, rejected: [] },
    ],
  };
}

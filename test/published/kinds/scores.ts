/** Points, percentiles, classes and units: one call of the engine against one printed value. */
import { dotsAtPercentile, dotsPercentile } from "../../../engine/assessment/percentile";
import { dotsPoints, glPoints } from "../../../engine/assessment/points";
import { findWeightClass } from "../../../engine/assessment/weight-class";
import type { LiftingEvent, LiftsCounted } from "../../../engine/rules/points";
import { kgFromLb, lbFromKg } from "../../../engine/units";
import type { Sex } from "../../../engine/words";
import { compareOne, roundsTo, type Comparison, type Finding } from "./kind";

interface Score {
  readonly sex: Sex;
  readonly bodyweightKg: number;
  readonly totalKg: number;
  readonly points: number;
  readonly decimals: number;
}

export function compareDots({ sex, bodyweightKg, totalKg, points, decimals }: Score): Comparison {
  const ours = dotsPoints(sex, bodyweightKg, totalKg);
  return compareOne(points, ours, roundsTo(points, decimals, ours));
}

export function compareGl(
  given: Score & { readonly event: LiftingEvent; readonly lifts: LiftsCounted },
): Comparison {
  const ours = glPoints(given.sex, given.bodyweightKg, given.totalKg, given.event, given.lifts);
  return compareOne(given.points, ours, ours !== null && roundsTo(given.points, given.decimals, ours));
}

interface ClassCase {
  readonly sex: Sex;
  readonly on: string;
  /** Class name by bodyweight in kg. */
  readonly classes: Readonly<Record<string, string>>;
}

export function compareClasses({ sex, on, classes }: ClassCase): Comparison {
  const entries = Object.entries(classes);
  const findings = entries.flatMap(([bodyweight, printed]): Finding[] => {
    const ours = findWeightClass(sex, Number(bodyweight), on).name;
    return ours === printed ? [] : [{ at: bodyweight, printed, ours }];
  });
  return { compared: entries.length, findings };
}

interface PercentileTable {
  readonly sex: Sex;
  readonly decimals: number;
  /** DOTS by percentile. */
  readonly dots: Readonly<Record<string, number>>;
}

export function comparePercentiles({ sex, decimals, dots }: PercentileTable): Comparison {
  const entries = Object.entries(dots);
  const findings = entries.flatMap(([percentile, printed]): Finding[] => {
    const ours = dotsAtPercentile(sex, Number(percentile));
    return roundsTo(printed, decimals, ours) ? [] : [{ at: `p${percentile}`, printed, ours }];
  });
  return { compared: entries.length, findings };
}

interface PaperRatios {
  readonly sex: Sex;
  /** Sum of the three lifts' printed ratios to bodyweight at the paper's percentile. */
  readonly totalPerBodyweight: number;
  readonly percentile: number;
  /** Over which the percentile is averaged: a ratio flatters the light, so no single class will do. */
  readonly bodyweightsKg: readonly number[];
  /** Percentile points. */
  readonly within: number;
}

export function comparePaperRatios(given: PaperRatios): Comparison {
  const percentiles = given.bodyweightsKg.map((bodyweightKg) =>
    dotsPercentile(given.sex, dotsPoints(given.sex, bodyweightKg, given.totalPerBodyweight * bodyweightKg)),
  );
  const ours = percentiles.reduce((sum, each) => sum + each, 0) / percentiles.length;
  return compareOne(given.percentile, ours, Math.abs(ours - given.percentile) <= given.within);
}

export function comparePounds({
  lb,
  kg,
  decimals,
}: {
  lb: number;
  kg: number;
  decimals: number;
}): Comparison {
  const there = roundsTo(kg, decimals, kgFromLb(lb));
  const back = Math.abs(lbFromKg(kgFromLb(lb)) - lb) < 1e-12;
  return compareOne(kg, kgFromLb(lb), there && back);
}

/** How many heavy exposures a lift's peaking should hold, and how many days each takes. */
import {
  EXPOSURES_BY_LEVEL,
  LIGHT_WOMAN_EXPOSURES,
  SPACING_BY_LEVEL,
  SPACING_BY_LIFT,
  SPACING_BY_SIZE,
} from "../rules/exposures";
import type { RuleRow } from "../rules/sources";
import type { Lift } from "../words";
import type { Lifter } from "./set-targets";

export interface ExposureNeed {
  readonly exposures: number;
  readonly daysApart: number;
  readonly rules: readonly RuleRow[];
}

export function needExposures(lifter: Lifter, lift: Lift): ExposureNeed {
  const isLightWoman = lifter.sex === "female" && lifter.size === "light";
  const counted = [EXPOSURES_BY_LEVEL[lifter.level], ...(isLightWoman ? [LIGHT_WOMAN_EXPOSURES] : [])];
  const spaced = [SPACING_BY_LEVEL[lifter.level], SPACING_BY_SIZE[lifter.size], SPACING_BY_LIFT[lift]];
  return {
    exposures: counted.reduce((sum, row) => sum + row.exposures, 0),
    daysApart: spaced.reduce((sum, row) => sum + row.days, 0),
    rules: [...counted, ...spaced],
  };
}

/** Exposures that a peaking phase of `weeks` cannot hold, meet week left free of them. */
export function missingExposures(need: ExposureNeed, weeks: number): number {
  return Math.max(0, need.exposures - Math.floor((Math.max(0, weeks - 1) * 7) / need.daysApart));
}

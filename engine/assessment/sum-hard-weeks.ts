/** Hard weeks before a planned deload, as a sum the coach can read item by item. */
import {
  BRAND_NEW,
  BY_LEVEL,
  BY_RECOVERY,
  BY_SEX,
  BY_SIZE,
  EXPLOSIVE,
  ROUNDING,
  type TenthsRow,
} from "../rules/hard-weeks";
import { M1 } from "../rules/model";
import type { Decision, SumItem } from "../why";
import type { Level, Recovery, Sex, Size } from "../words";

export interface Fatigue {
  readonly level: Level;
  readonly size: Size;
  readonly sex: Sex;
  readonly recovery: Recovery;
  readonly explosive: boolean;
  readonly trainingYears: number;
}

export interface HardWeeks {
  readonly hardWeeks: number;
  /** What the assessment alone gives. */
  readonly assessed: number;
  readonly decisions: readonly Decision[];
}

export function sumHardWeeks(fatigue: Fatigue, set: number | null): HardWeeks {
  const rows: TenthsRow[] = [
    BY_LEVEL[fatigue.level],
    BY_SIZE[fatigue.size],
    BY_SEX[fatigue.sex],
    BY_RECOVERY[fatigue.recovery],
    ...(fatigue.explosive ? [EXPLOSIVE] : []),
    ...(fatigue.trainingYears < BRAND_NEW.belowYears ? [BRAND_NEW] : []),
  ];
  const items = rows.map((rule): SumItem => ({ rule, tenths: rule.tenths }));
  const sumTenths = items.reduce((sum, item) => sum + item.tenths, 0);
  const assessed = Math.min(M1.max, Math.max(M1.min, roundHalfDown(sumTenths)));
  const hardWeeks = set ?? assessed;
  return {
    hardWeeks,
    assessed,
    decisions: [
      {
        about: "hardWeeks",
        value: hardWeeks,
        rules: [...rows, ROUNDING, M1],
        given: { sumTenths, items, recovery: fatigue.recovery, set: set !== null, assessed },
        rejected: set !== null && set !== assessed ? [assessed] : [],
      },
    ],
  };
}

/** Tenths of a week to whole weeks, to the nearest, a half downwards. */
function roundHalfDown(tenths: number): number {
  return Math.ceil((tenths - 5) / 10);
}

/** Hard weeks before a planned deload, as an itemised sum in tenths of a week. */
import type { Level, Recovery, Sex, Size } from "../words";
import { house, inferred, practice, type RuleRow } from "./sources";

export interface TenthsRow extends RuleRow {
  readonly tenths: number;
}

const SPREAD = inferred(
  "the customary weeks for each kind of lifter, spread so that every named case comes out",
);

export const BY_LEVEL: Readonly<Record<Level, TenthsRow>> = {
  beginner: { id: "hardWeeks.level.beginner", tenths: 50, ...practice() },
  intermediate: { id: "hardWeeks.level.intermediate", tenths: 44, ...SPREAD },
  advanced: { id: "hardWeeks.level.advanced", tenths: 38, ...SPREAD },
  "very advanced": { id: "hardWeeks.level.veryAdvanced", tenths: 34, ...SPREAD },
};

export const BY_SIZE: Readonly<Record<Size, TenthsRow>> = {
  light: { id: "hardWeeks.size.light", tenths: 3, ...SPREAD },
  middle: { id: "hardWeeks.size.middle", tenths: 0, ...SPREAD },
  heavy: { id: "hardWeeks.size.heavy", tenths: -4, ...SPREAD },
};

export const BY_SEX: Readonly<Record<Sex, TenthsRow>> = {
  female: {
    id: "hardWeeks.sex.female",
    tenths: 1,
    ...inferred(
      "Hunter 2016, Med Sci Sports Exerc 48(11):2247-2256: women usually tire less, but it depends on the task: a small term only",
    ),
  },
  male: { id: "hardWeeks.sex.male", tenths: 0, ...SPREAD },
};

export const BY_RECOVERY: Readonly<Record<Recovery, TenthsRow>> = {
  low: { id: "hardWeeks.recovery.low", tenths: -4, ...SPREAD },
  normal: { id: "hardWeeks.recovery.normal", tenths: 0, ...SPREAD },
  high: { id: "hardWeeks.recovery.high", tenths: 2, ...SPREAD },
};

export const EXPLOSIVE: TenthsRow = { id: "hardWeeks.explosive", tenths: -4, ...SPREAD };

/** Added while a lifter is brand new. */
export const BRAND_NEW = { id: "hardWeeks.brandNew", tenths: 2, belowYears: 1, ...SPREAD } as const;

export const ROUNDING = {
  id: "hardWeeks.rounding",
  ...house("to the nearest week, a half downwards: a deload a week early costs less than a week late"),
} as const;

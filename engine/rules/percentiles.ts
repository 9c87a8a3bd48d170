/**
 * How totals of real meets are spread, as DOTS percentiles by sex.
 *
 * The population is people who entered meets, not people who train: unequipped three-lift totals at meets under
 * the international federation and its affiliates, January 2015 to August 2024, every age, one row per lifter per
 * meet (a lifter who competes often counts often), without failed totals. Aggregates only; the archive's rows are
 * waived into the public domain. To regenerate: filter the archive as `from` says, score each total with
 * rules/points.ts, and take p1 to p99 by linear interpolation at rank (n - 1) p.
 */
import type { Sex } from "../words";
import { inferred, type RuleRow } from "./sources";

export interface PercentileRow extends RuleRow {
  readonly sex: Sex;
  /** Totals counted. */
  readonly entries: number;
  /** DOTS at the 1st to the 99th percentile, rising. */
  readonly dots: readonly number[];
}

const ARCHIVE = inferred(
  "computed from the public-domain results of the open meet-results archive OpenPowerlifting (copy gingerlifts/opl-data, commit 473b4cfc9c2112808491a944ed134629476a907e, 2024-08-23): IPF-affiliated, Raw, squat-bench-deadlift, 2015-01-01 to 2024-08-31, one row per lifter per meet, disqualified and total-less rows left out",
);

// prettier-ignore
export const DOTS_PERCENTILES: readonly PercentileRow[] = [
  {
    id: "percentiles.dots.male",
    sex: "male",
    entries: 248907,
    dots: [
      181.68, 206.11, 221.87, 233.62, 243.22, 250.87, 257.62, 263.66, 268.83, 273.63,
      277.82, 281.78, 285.39, 288.85, 292.05, 295.17, 298.02, 300.72, 303.31, 305.76,
      308.11, 310.42, 312.65, 314.79, 316.9, 319.0, 321.04, 323.02, 324.93, 326.8,
      328.67, 330.45, 332.15, 333.85, 335.56, 337.22, 338.9, 340.52, 342.16, 343.75,
      345.34, 346.92, 348.48, 350.07, 351.58, 353.1, 354.59, 356.13, 357.65, 359.15,
      360.64, 362.18, 363.69, 365.21, 366.73, 368.25, 369.77, 371.32, 372.84, 374.38,
      375.95, 377.48, 379.03, 380.63, 382.18, 383.83, 385.51, 387.18, 388.92, 390.58,
      392.3, 394.04, 395.8, 397.6, 399.54, 401.41, 403.41, 405.35, 407.36, 409.42,
      411.57, 413.78, 416.04, 418.46, 421.12, 423.73, 426.51, 429.49, 432.73, 436.12,
      439.81, 443.7, 448.16, 453.04, 458.72, 465.19, 473.54, 483.97, 500.31,
    ],
    ...ARCHIVE,
  },
  {
    id: "percentiles.dots.female",
    sex: "female",
    entries: 126722,
    dots: [
      170.75, 188.88, 200.04, 208.6, 215.16, 221.14, 226.16, 230.93, 235.0, 238.66,
      242.18, 245.43, 248.63, 251.57, 254.34, 257.15, 259.66, 262.15, 264.52, 266.83,
      269.11, 271.37, 273.6, 275.61, 277.58, 279.55, 281.45, 283.38, 285.25, 287.14,
      288.94, 290.84, 292.6, 294.42, 296.13, 297.83, 299.56, 301.23, 303.03, 304.74,
      306.51, 308.16, 309.74, 311.49, 313.24, 314.93, 316.69, 318.32, 319.94, 321.59,
      323.31, 324.93, 326.61, 328.34, 330.05, 331.74, 333.46, 335.2, 336.89, 338.58,
      340.27, 341.98, 343.73, 345.44, 347.2, 348.99, 350.9, 352.88, 354.79, 356.63,
      358.58, 360.56, 362.61, 364.69, 366.83, 368.89, 371.1, 373.35, 375.65, 378.18,
      380.67, 383.11, 385.76, 388.68, 391.75, 394.91, 398.22, 401.42, 404.98, 409.2,
      413.64, 418.37, 423.57, 429.75, 436.17, 444.34, 454.07, 468.33, 491.59,
    ],
    ...ARCHIVE,
  },
];

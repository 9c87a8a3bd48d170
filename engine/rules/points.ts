/**
 * Coefficients of the two formulas that make totals comparable across bodyweights.
 *
 * DOTS = total * 500 / (quartic x^4 + cubic x^3 + square x^2 + linear x + constant), x the bodyweight in kg
 * held within [lightestKg, heaviestKg].
 * GL = 100 * total / (a - b * exp(-c * bodyweight in kg)).
 */
import type { Day } from "../calendar/day";
import type { Sex } from "../words";
import { house, printed, type RuleRow } from "./sources";

export interface DotsRow extends RuleRow {
  readonly sex: Sex;
  readonly lightestKg: number;
  readonly heaviestKg: number;
  readonly quartic: number;
  readonly cubic: number;
  readonly square: number;
  readonly linear: number;
  readonly constant: number;
}

/** Lifted without supportive kit, or with it. */
export type LiftingEvent = "classic" | "equipped";
/** What the total is made of: all three lifts, or the bench press alone. */
export type LiftsCounted = "full" | "bench";

export interface GlRow extends RuleRow {
  readonly sex: Sex;
  readonly event: LiftingEvent;
  readonly lifts: LiftsCounted;
  readonly validFrom: Day;
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

const DOTS_SOURCE = printed(
  "T. Konertz for the BVDK (German affiliate of the IPF), as printed in crates/coefficients/src/dots.rs of the open meet-results archive OpenPowerlifting",
);

export const DOTS_ROWS: readonly DotsRow[] = [
  {
    id: "dots.male",
    sex: "male",
    lightestKg: 40,
    heaviestKg: 210,
    quartic: -0.000001093,
    cubic: 0.0007391293,
    square: -0.1918759221,
    linear: 24.0900756,
    constant: -307.75076,
    ...DOTS_SOURCE,
  },
  {
    id: "dots.female",
    sex: "female",
    lightestKg: 40,
    heaviestKg: 150,
    quartic: -0.0000010706,
    cubic: 0.0005158568,
    square: -0.1126655495,
    linear: 13.6175032,
    constant: -57.96288,
    ...DOTS_SOURCE,
  },
];

const GL_SOURCE = printed(
  "IPF GL formula (Kopayev, Onyshchenko, Stetsenko), in force since 2020-05-01, as printed in crates/coefficients/src/goodlift.rs of the open meet-results archive OpenPowerlifting; a later revision is not confirmed either way",
);

function glRow(sex: Sex, event: LiftingEvent, lifts: LiftsCounted, a: number, b: number, c: number): GlRow {
  return {
    id: `gl.${sex}.${event}.${lifts}`,
    sex,
    event,
    lifts,
    validFrom: "2020-05-01",
    a,
    b,
    c,
    ...GL_SOURCE,
  };
}

export const GL_ROWS: readonly GlRow[] = [
  glRow("male", "classic", "full", 1199.72839, 1025.18162, 0.00921),
  glRow("male", "equipped", "full", 1236.25115, 1449.21864, 0.01644),
  glRow("male", "classic", "bench", 320.98041, 281.40258, 0.01008),
  glRow("male", "equipped", "bench", 381.22073, 733.79378, 0.02398),
  glRow("female", "classic", "full", 610.32796, 1045.59282, 0.03048),
  glRow("female", "equipped", "full", 758.63878, 949.31382, 0.02435),
  glRow("female", "classic", "bench", 142.40398, 442.52671, 0.04724),
  glRow("female", "equipped", "bench", 221.82209, 357.00377, 0.02937),
];

/** Below this bodyweight no GL points are given. */
export const GL_GUARD: RuleRow & { readonly lightestKg: number } = {
  id: "gl.guard",
  lightestKg: 35,
  ...house(
    "the open meet-results archive stops at the same bodyweight; the formula's own text names no bound we have read",
  ),
};

/** Points that compare totals across bodyweights. Nothing is rounded here. */
import { assert } from "../outcome";
import { DOTS_ROWS, GL_GUARD, GL_ROWS, type LiftingEvent, type LiftsCounted } from "../rules/points";
import type { Sex } from "../words";

/**
 * DOTS points of a three-lift total; coefficients in rules/points.ts.
 * Bodyweights outside the formula's range count as its nearest end.
 */
export function dotsPoints(sex: Sex, bodyweightKg: number, totalKg: number): number {
  const row = DOTS_ROWS.find((each) => each.sex === sex);
  assert(row, "No DOTS row", { sex }, "rules/points.ts lost a row");
  const x = Math.min(row.heaviestKg, Math.max(row.lightestKg, bodyweightKg));
  const divisor = (((row.quartic * x + row.cubic) * x + row.square) * x + row.linear) * x + row.constant;
  assert(
    divisor > 0,
    "DOTS divisor",
    { sex, bodyweightKg, divisor },
    "a coefficient in rules/points.ts lost its sign",
  );
  return (totalKg * 500) / divisor;
}

/** IPF GL points of a full total or a bench-only one; null below 35 kg bodyweight, where the formula says nothing. */
export function glPoints(
  sex: Sex,
  bodyweightKg: number,
  totalKg: number,
  event: LiftingEvent,
  lifts: LiftsCounted,
): number | null {
  if (!(bodyweightKg >= GL_GUARD.lightestKg)) return null;
  const row = GL_ROWS.find((each) => each.sex === sex && each.event === event && each.lifts === lifts);
  assert(row, "No GL row", { sex, event, lifts }, "rules/points.ts lost a row");
  const divisor = row.a - row.b * Math.exp(-row.c * bodyweightKg);
  assert(
    divisor > 0,
    "GL divisor",
    { sex, bodyweightKg, divisor },
    "a coefficient in rules/points.ts was mistyped",
  );
  return (100 * totalKg) / divisor;
}

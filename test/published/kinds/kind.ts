/** What a kind of published check is: a case from cases.json in, how much was compared and what disagrees out. */
import type { Standing } from "../../../engine/rules/sources";

export interface PublishedCase {
  readonly id: string;
  readonly standing: Standing;
}

export interface Finding {
  /** Tells one disagreement of a case from another; "" where a case has a single comparison. */
  readonly at: string;
  readonly printed: unknown;
  readonly ours: unknown;
}

export interface Comparison {
  readonly compared: number;
  readonly findings: readonly Finding[];
}

/** Runs one case. The runner has checked that `id` and `standing` are there; the rest is the kind's own. */
export type Kind = (given: never) => Comparison;

/** One value against another. */
export function compareOne(printed: unknown, ours: unknown, agrees: boolean): Comparison {
  return { compared: 1, findings: agrees ? [] : [{ at: "", printed, ours }] };
}

/** Whether `ours` rounds to what was printed with so many decimals; a last digit rounded the other way at a half passes. */
export function roundsTo(printed: number, decimals: number, ours: number): boolean {
  return Math.abs(ours - printed) <= 0.5 * 10 ** -decimals + 1e-9;
}

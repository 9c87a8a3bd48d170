/**
 * Where a rule row comes from. Spread one of these into every row:
 *
 *     { id: "…", min: 8, max: 14, ...practice() }
 *
 * A test fails on a row without a source and a standing.
 */

/** printed: a source prints it; practice: common practice, no source; inferred: worked out from a source or from rows beside it; house: our choice, with its reason; memory: from memory, unchecked. */
export const STANDINGS = ["printed", "practice", "inferred", "house", "memory"] as const;
export type Standing = (typeof STANDINGS)[number];

export interface Sourced {
  readonly standing: Standing;
  /** The source, or the reason where the choice is ours. */
  readonly from: string;
}

/** A row of data: its name, its source and standing. Rooms add their own fields. */
export interface RuleRow extends Sourced {
  readonly id: string;
}

export const printed = (source: string): Sourced => ({ standing: "printed", from: source });
export const practice = (): Sourced => ({ standing: "practice", from: "common practice" });
export const inferred = (fromWhat: string): Sourced => ({ standing: "inferred", from: fromWhat });
export const house = (reason: string): Sourced => ({ standing: "house", from: reason });
export const memory = (source: string): Sourced => ({ standing: "memory", from: source });

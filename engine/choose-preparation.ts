/** The best preparation the available weeks allow, its runners-up, or which rules are in the way. */
import { stateProblem, readPartition, type Preparation, type Terms } from "./preparation";
import { M1, M2, M3, M4, M5, MODEL_RULES, type ModelRuleId } from "./rules/model";
import { solvePartitions } from "./search/partition";

/** What the weeks are counted against. */
export interface WeeksAsked {
  /** Calendar weeks from the first training week to meet week, both counted. */
  readonly available: number;
  /** Weeks the lifter can make good use of. */
  readonly least: number;
  readonly most: number;
  /** Weeks the coach set; null to choose. */
  readonly set: number | null;
}

/** Best first, at most one for each mesocycle pattern and `keep` in all; empty when nothing fits. */
export function choosePreparations(terms: Terms, weeks: WeeksAsked, keep = 1): readonly Preparation[] {
  for (const lengths of lengthsToTry(weeks)) {
    const problems = lengths
      .map((length) => stateProblem(terms, length))
      .filter((problem) => problem !== null);
    const found = solvePartitions(problems, keep);
    if (found.length > 0) return found.map((partition) => readPartition(terms, partition));
  }
  return [];
}

/** Rule M2: all weeks there are when the lifter can use them, else the lengths of use; shorter ones only when no other has a plan. */
function lengthsToTry({ available, least, most, set }: WeeksAsked): readonly (readonly number[])[] {
  if (set !== null) return set <= available ? [[set]] : [];
  if (available <= most) return [[available], between(1, available - 1)];
  return [between(least, most), between(1, least - 1)];
}

function between(from: number, to: number): readonly number[] {
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, index) => from + index);
}

const RELAXABLE: readonly ModelRuleId[] = [M5.id, M4.id, M3.id, M1.id];

export interface Bent {
  readonly preparation: Preparation;
  readonly breaks: readonly ModelRuleId[];
}

/** The best preparation that gives up the fewest of `relaxable` rules; null when none helps. */
export function bendPreparation(
  terms: Terms,
  weeks: WeeksAsked,
  relaxable: readonly ModelRuleId[],
): Bent | null {
  const sets = subsets(relaxable.filter((id) => RELAXABLE.includes(id)));
  for (const breaks of sets) {
    const [preparation] = choosePreparations({ ...terms, givenUp: new Set(breaks) }, weeks);
    if (preparation) return { preparation, breaks };
  }
  return null;
}

/** Rules whose giving up alone would make a plan possible; where none does alone, the fewest that do together. */
export function findBinding(terms: Terms, weeks: WeeksAsked): readonly ModelRuleId[] {
  const alone = RELAXABLE.filter((id) => bendPreparation(terms, weeks, [id]) !== null);
  if (alone.length > 0) return alone;
  return bendPreparation(terms, weeks, RELAXABLE)?.breaks ?? [M2.id];
}

/** Every non-empty subset, the smaller first. */
function subsets<T>(items: readonly T[]): readonly (readonly T[])[] {
  const all = Array.from({ length: 2 ** items.length - 1 }, (_, bits) =>
    items.filter((_item, i) => (bits + 1) & (1 << i)),
  );
  return all.sort((a, b) => a.length - b.length);
}

export const rulesOf = (ids: readonly ModelRuleId[]) => ids.map((id) => MODEL_RULES[id]);

/** What one preparation saves and what it adds against another, cost by cost. */
import type { Preparation } from "./preparation";
import type { CostItem } from "./why";

export interface Compared {
  readonly costMore: number;
  readonly gains: readonly CostItem[];
  readonly givesUp: readonly CostItem[];
}

const keyOf = (item: CostItem): string => `${item.rule.id} ${item.lift ?? ""}`;

/** Costs of one kind for one lift added up. */
function sumByKind(items: readonly CostItem[]): Map<string, CostItem> {
  const sums = new Map<string, CostItem>();
  for (const item of items) {
    const before = sums.get(keyOf(item));
    sums.set(
      keyOf(item),
      before ? { ...item, weeks: before.weeks + item.weeks, cost: before.cost + item.cost } : item,
    );
  }
  return sums;
}

/** Smaller than any real difference between two sums of costs, larger than their rounding. */
const NOTHING = 1e-9;

function excess(of: Map<string, CostItem>, over: Map<string, CostItem>): CostItem[] {
  return [...of].flatMap(([key, item]) => {
    const other = over.get(key);
    const cost = item.cost - (other?.cost ?? 0);
    return cost > NOTHING ? [{ ...item, weeks: item.weeks - (other?.weeks ?? 0), cost }] : [];
  });
}

export function compareCosts(chosen: Preparation, other: Preparation): Compared {
  const [own, others] = [sumByKind(chosen.costs), sumByKind(other.costs)];
  return { costMore: other.cost - chosen.cost, gains: excess(own, others), givesUp: excess(others, own) };
}

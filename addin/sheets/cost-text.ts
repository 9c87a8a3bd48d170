/** What a plan pays for, line by line, and what another plan saves or adds. */
import { assert, type CostItem } from "../../engine";
import { capitalised, countText, numberText, weeksText } from "./count-text";

interface CostWords {
  /** As it stands in a plan. */
  readonly stands: (weeks: number) => string;
  /** When another plan has that much less of it. */
  readonly saved: (weeks: number) => string;
  /** When another plan has that much more of it. */
  readonly added: (weeks: number) => string;
}

const COST_WORDS: Readonly<Record<string, CostWords>> = {
  "cost.target": {
    stands: (weeks) => `phases ${weeksText(weeks)} away from their targets`,
    saved: (weeks) => `phases ${weeksText(weeks)} nearer their targets`,
    added: (weeks) => `phases ${weeksText(weeks)} further from their targets`,
  },
  "cost.outside": {
    stands: (weeks) => `phases ${weeksText(weeks)} outside their usual ranges`,
    saved: (weeks) => `${weeksText(weeks)} less outside the usual ranges`,
    added: (weeks) => `${weeksText(weeks)} more outside the usual ranges`,
  },
  "cost.rhythm": {
    stands: (weeks) => `a mesocycle ${weeksText(weeks)} away from the lifter's own rhythm`,
    saved: (weeks) => `mesocycles ${weeksText(weeks)} nearer the lifter's own rhythm`,
    added: (weeks) => `mesocycles ${weeksText(weeks)} further from the lifter's own rhythm`,
  },
  "cost.finalShorter": {
    stands: (weeks) => `the final mesocycle ${weeksText(weeks)} shorter than the lifter's own rhythm`,
    saved: (weeks) => `the final mesocycle ${weeksText(weeks)} nearer the lifter's own rhythm`,
    added: (weeks) => `the final mesocycle ${weeksText(weeks)} shorter`,
  },
  "cost.changeInside": {
    stands: (count) => `${countText(count, "phase change")} inside a mesocycle, not at a deload`,
    saved: (count) => `${countText(count, "phase change")} more at a deload`,
    added: (count) => `${countText(count, "phase change")} more inside a mesocycle`,
  },
  "cost.longerThanBefore": {
    stands: (weeks) => `a mesocycle ${weeksText(weeks)} longer than the one before it`,
    saved: (weeks) => `mesocycles grow by ${weeksText(weeks)} less towards the meet`,
    added: (weeks) => `mesocycles grow by ${weeksText(weeks)} more towards the meet`,
  },
  "cost.exposure": {
    stands: (count) => `peaking too short for ${countText(count, "heavy exposure")}`,
    saved: (count) => `${countText(count, "heavy exposure")} more in peaking`,
    added: (count) => `${countText(count, "heavy exposure")} fewer in peaking`,
  },
  "cost.unusedWeek": {
    stands: (weeks) => `${weeksText(weeks)} of use to the lifter left to general training`,
    saved: (weeks) => `${weeksText(weeks)} more of directed preparation`,
    added: (weeks) => `${weeksText(weeks)} less of directed preparation`,
  },
};

function worded(item: CostItem, how: keyof CostWords): string {
  const words = Object.hasOwn(COST_WORDS, item.rule.id) ? COST_WORDS[item.rule.id] : undefined;
  assert(words, "a cost without words", { id: item.rule.id }, "it is new and wants a line in cost-text.ts");
  const text = words[how](item.weeks);
  return item.lift === null ? capitalised(text) : `${capitalised(item.lift)}: ${text}`;
}

const pointsText = (cost: number): string => countText(cost, "point");

/** "Squat: phases 2.5 weeks away from their targets (costs 2.5 points)" */
export function costText(item: CostItem): string {
  return `${worded(item, "stands")} (costs ${pointsText(item.cost)})`;
}

/** A cost of the plan chosen that another saves. */
export const savedText = (item: CostItem): string => worded(item, "saved");

/** A cost that another plan adds. */
export const addedText = (item: CostItem): string => worded(item, "added");

/** "costs 2.5 points more" beside the choice made. */
export function costMoreText(costMore: number): string {
  const size = Math.abs(costMore);
  if (numberText(size) === "0") return "costs the same";
  return costMore > 0
    ? `costs ${pointsText(size)} more`
    : `costs ${pointsText(size)} less by itself, but does not go with the rest`;
}

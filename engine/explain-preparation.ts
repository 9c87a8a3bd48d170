/** Why a preparation is what it is: a decision for each thing that was chosen, with what was passed over. */
import type { WeeksAsked } from "./choose-preparation";
import { itemiseLift, mesocycleEnds, type Preparation, type Terms } from "./preparation";
import { boundPhases, isWithin } from "./phases/bound-phases";
import { scaleTargets } from "./phases/set-targets";
import { COSTS, M1, M2, M3, M4, M5, M6, M7 } from "./rules/model";
import type { RuleRow } from "./rules/sources";
import type { Decision, PhaseWeeks } from "./why";
import { LIFTS, type Lift } from "./words";

/** Other splits of a lift shown beside the one chosen. */
const OTHERS_SHOWN = 2;

export function explainPreparation(
  terms: Terms,
  weeks: WeeksAsked,
  chosen: Preparation,
  others: readonly Preparation[],
  rangeRules: readonly RuleRow[],
): readonly Decision[] {
  const { lifter } = terms;
  const rhythm = chosen.costs.filter((item) => item.lift === null);
  return [
    explainWeeks(weeks, chosen, others, rangeRules),
    {
      about: "mesocycles",
      value: chosen.hardWeeks,
      rules: [M1, M7, COSTS.rhythm, COSTS.finalShorter, COSTS.longerThanBefore],
      given: { hardWeeks: terms.hardWeeks, arrangement: terms.arrangement, costs: rhythm },
      rejected: others
        .filter((other) => other.directedWeeks === chosen.directedWeeks)
        .map((other) => ({ hardWeeks: other.hardWeeks, costMore: other.cost - chosen.cost })),
    },
    {
      about: "phaseTargets",
      value: scaleTargets(terms.targets, chosen.directedWeeks),
      rules: uniqueRules(LIFTS.flatMap((lift) => terms.targets[lift].rules)),
      given: {
        directedWeeks: chosen.directedWeeks,
        level: lifter.level,
        size: lifter.size,
        roomInClass: lifter.roomInClass,
      },
      rejected: [],
    },
    ...LIFTS.map((lift) => explainLift(terms, chosen, lift)),
  ];
}

function explainWeeks(
  weeks: WeeksAsked,
  chosen: Preparation,
  others: readonly Preparation[],
  rangeRules: readonly RuleRow[],
): Decision {
  const otherLengths = others.filter((other) => other.directedWeeks !== chosen.directedWeeks);
  return {
    about: "prepWeeks",
    value: chosen.directedWeeks,
    rules: [M2, ...rangeRules, COSTS.unusedWeek],
    given: {
      available: weeks.available,
      bridge: weeks.available - chosen.directedWeeks,
      set: weeks.set !== null,
    },
    rejected: otherLengths.map((other) => ({
      weeks: other.directedWeeks,
      costMore: other.cost - chosen.cost,
    })),
  };
}

/** A lift's split, beside the next best splits that hold with the same mesocycles and the other lifts as they are. */
function explainLift(terms: Terms, chosen: Preparation, lift: Lift): Decision {
  const split = chosen.lifts[lift];
  const ends = mesocycleEnds(chosen.hardWeeks);
  const itemise = (weeks: PhaseWeeks) => itemiseLift(terms, lift, weeks, chosen.directedWeeks, ends);
  const total = (weeks: PhaseWeeks) => itemise(weeks).reduce((sum, item) => sum + item.cost, 0);
  const costs = itemise(split);
  const cost = total(split);
  const others = LIFTS.filter((other) => other !== lift).map((other) => chosen.lifts[other]);
  const bounds = boundPhases(chosen.directedWeeks, terms.lifter, { M3: true, M4: true });
  const rejected = splitsNear(split)
    .filter((other) => isWithin(other, bounds) && keepsDeloads(other, ends, chosen.directedWeeks))
    .filter((other) => others.every((beside) => isWithinOnePhase(other, beside)))
    .map((weeks) => ({ weeks, costMore: total(weeks) - cost }))
    .sort((a, b) => a.costMore - b.costMore)
    .slice(0, OTHERS_SHOWN);
  const need = terms.exposures[lift];
  return {
    about: "phaseWeeks",
    value: split,
    rules: uniqueRules([M3, M4, M5, M6, ...costs.map((item) => item.rule), ...need.rules]),
    given: { lift, target: scaleTargets(terms.targets, chosen.directedWeeks)[lift], costs },
    rejected,
  };
}

/** Whether every deload belongs to the phase it ends; meet week may be a peaking of its own. */
function keepsDeloads(
  { hypertrophy, strength }: PhaseWeeks,
  ends: ReadonlySet<number>,
  directedWeeks: number,
): boolean {
  const changes = [hypertrophy, hypertrophy + strength].filter((week) => week > 0);
  return changes.every((week) => week + 1 === directedWeeks || !ends.has(week + 1));
}

/** Splits that move one week from one phase to another. */
function splitsNear({ hypertrophy, strength, peaking }: PhaseWeeks): PhaseWeeks[] {
  const near: PhaseWeeks[] = [];
  for (const [h, s, p] of ONE_WEEK_MOVES) {
    const split = { hypertrophy: hypertrophy + h, strength: strength + s, peaking: peaking + p };
    if (split.hypertrophy >= 0) near.push(split);
  }
  return near;
}
const ONE_WEEK_MOVES = [
  [1, -1, 0],
  [-1, 1, 0],
  [0, 1, -1],
  [0, -1, 1],
  [1, 0, -1],
  [-1, 0, 1],
] as const;

/** Rule M5 for two lifts: neither is in peaking while the other is in hypertrophy. */
export function isWithinOnePhase(a: PhaseWeeks, b: PhaseWeeks): boolean {
  return a.hypertrophy <= b.hypertrophy + b.strength && b.hypertrophy <= a.hypertrophy + a.strength;
}

function uniqueRules(rules: readonly RuleRow[]): readonly RuleRow[] {
  return [...new Map(rules.map((rule) => [rule.id, rule])).values()];
}

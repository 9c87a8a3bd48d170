/** The rules a plan must hold and the costs that choose among plans that hold them. */
import { house, practice, type RuleRow } from "./sources";

export const M1 = { id: "M1", min: 2, max: 6, tolerance: 1, ...practice() } as const;
export const M2 = { id: "M2", ...practice() } as const;
export const M3 = {
  id: "M3",
  hypertrophy: { min: 3, max: 16 },
  strength: { min: 3, max: 16 },
  peaking: { min: 2, max: 9, minLightBeginnerWoman: 1 },
  ...practice(),
} as const;
/** Per cent of the directed preparation, each bound rounded outward to whole weeks. */
export const M4 = {
  id: "M4",
  hypertrophy: { minPct: 0, maxPct: 50 },
  strength: { minPct: 20, maxPct: 70, maxPctVeryAdvancedWithoutHypertrophy: 75 },
  peaking: { minPct: 15, maxPct: 50, maxPctVeryAdvancedHeavyMan: 75 },
  ...practice(),
} as const;
export const M5 = { id: "M5", ...practice() } as const;
export const M6 = { id: "M6", ...practice() } as const;
export const M7 = { id: "M7", ...practice() } as const;
export const MODEL_RULES = { M1, M2, M3, M4, M5, M6, M7 } as const;
export type ModelRuleId = keyof typeof MODEL_RULES;

/** A cost's weight is a whole number of these parts, so that all costs add up exactly. */
export const COST_PARTS = 20;

export interface CostRow extends RuleRow {
  /** Cost of one week, one change or one exposure; a multiple of 1/COST_PARTS. */
  readonly weight: number;
}

const TUNED = house(
  "lighter rhythm weights let the solver bend a lifter's rhythm to suit the phases, which no coach would sign",
);

export const COSTS = {
  target: { id: "cost.target", weight: 1, ...TUNED },
  outside: { id: "cost.outside", weight: 3, ...TUNED },
  rhythm: { id: "cost.rhythm", weight: 3, ...TUNED },
  finalShorter: {
    id: "cost.finalShorter",
    weight: 1.5,
    ...house("a short final mesocycle is only half as bad: the taper follows it"),
  },
  changeInside: { id: "cost.changeInside", weight: 2, ...TUNED },
  longerThanBefore: { id: "cost.longerThanBefore", weight: 1, ...TUNED },
  exposure: { id: "cost.exposure", weight: 2, ...TUNED },
  unusedWeek: {
    id: "cost.unusedWeek",
    weight: 1,
    ...house(
      "a week the lifter could use, given to general training instead, must buy a better rhythm or split",
    ),
  },
} as const satisfies Record<string, CostRow>;
export type CostName = keyof typeof COSTS;

/** With the lifts spread, the cost of leaving a lift's own target weighs this many times as much. */
export const SPREAD = {
  id: "cost.spread",
  factor: 2,
  ...house("the coach asks for each lift's own targets first"),
} as const;

/** Runners-up shown beside the plan. */
export const RUNNERS_UP = {
  id: "runnersUp",
  count: 3,
  ...house("enough to choose from, few enough to read"),
} as const;

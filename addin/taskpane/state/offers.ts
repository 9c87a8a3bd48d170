/** The plans a coach may choose from: the one that costs least, then the runners-up. */
import type { Plan, Planned } from "../../../engine/index";
import { runnerUpText } from "../../sheets/words";

export interface Offer {
  /** Null for the plan that costs least. */
  readonly key: string | null;
  readonly plan: Plan;
  readonly chosen: boolean;
  readonly title: string;
  readonly gains: readonly string[];
  readonly givesUp: readonly string[];
}

/** Tells plans of one answer apart: runners-up differ in their mesocycle pattern. */
export function keyOf(plan: Plan): string {
  return [plan.bridgeWeeks, ...plan.mesocycles.map((mesocycle) => mesocycle.hardWeeks)].join("-");
}

/** Every plan on offer, with the chosen one marked: `choice` when it is still on offer, else the first. */
export function offerPlans(answer: Planned, choice: string | null): readonly Offer[] {
  const key = answer.runnersUp.some(({ plan }) => keyOf(plan) === choice) ? choice : null;
  return [
    {
      key: null,
      plan: answer.plan,
      chosen: key === null,
      ...runnerUpText({ plan: answer.plan, costMore: 0, gains: [], givesUp: [] }, answer.plan),
    },
    ...answer.runnersUp.map((runnerUp) => ({
      key: keyOf(runnerUp.plan),
      plan: runnerUp.plan,
      chosen: key === keyOf(runnerUp.plan),
      ...runnerUpText(runnerUp, answer.plan),
    })),
  ];
}

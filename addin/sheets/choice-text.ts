/** Another plan to choose from: what sets it apart. */
import type { Plan, RunnerUp } from "../../engine";
import { countText, weeksText } from "./count-text";
import { addedText, costMoreText, savedText } from "./cost-text";
import { rhythmText } from "./plan-text";

export interface RunnerUpText {
  readonly title: string;
  readonly gains: readonly string[];
  readonly givesUp: readonly string[];
}

/** @param chosen the plan it stands beside; the same plan gives its title alone. */
export function runnerUpText(runnerUp: RunnerUp, chosen: Plan): RunnerUpText {
  const { plan, costMore, gains, givesUp } = runnerUp;
  const rhythm = rhythmText(plan.mesocycles.map((mesocycle) => mesocycle.hardWeeks));
  const bridge = plan.bridgeWeeks > 0 ? ` after ${countText(plan.bridgeWeeks, "bridge week")}` : "";
  const length =
    plan.directedWeeks === chosen.directedWeeks ? "" : ` (${weeksText(plan.directedWeeks)}${bridge})`;
  const more = plan === chosen ? "" : `, ${costMoreText(costMore)}`;
  return {
    title: `${rhythm}${length}${more}`,
    gains: gains.map(savedText),
    givesUp: givesUp.map(addedText),
  };
}

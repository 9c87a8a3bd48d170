/** One request put to the engine and to an outside solver. */
import type { DoesNotFit, Planned } from "../../../engine/answer";
import { planLifter } from "../../../engine/index";
import { instanceOf } from "./instance";
import type { RandomRequest } from "./requests";
import type { Solver } from "./solve";
import { stateProgramme, type Pattern } from "./state";
import { statePins } from "./state-pins";

/** Two costs closer than this are the same: real differences are multiples of 1/2400. */
export const SAME = 1e-6;

export type Fitted = Planned | DoesNotFit;

export function answerTo(request: RandomRequest): Fitted {
  const answer = planLifter(request);
  if (answer.status === "invalid")
    throw new Error(`Drawn wrongly: ${JSON.stringify([request, answer.problems])}`);
  return answer;
}

/** The least cost over some lengths of preparation, one programme for each; null when none fits. */
function leastOver(
  solver: Solver,
  answer: Fitted,
  lengths: readonly number[],
  forbidden?: Pattern,
): number | null {
  const instance = instanceOf(answer);
  const costs = lengths.flatMap((length) => {
    const programme = stateProgramme(instance, length, forbidden);
    statePins(programme, length, answer.request.pins);
    return solver(programme) ?? [];
  });
  return costs.length > 0 ? Math.min(...costs) : null;
}

/** The least cost, by the groups of lengths that M2 tries in turn. */
export function leastCost(solver: Solver, answer: Fitted): number | null {
  for (const lengths of instanceOf(answer).lengthGroups) {
    const cost = leastOver(solver, answer, lengths);
    if (cost !== null) return cost;
  }
  return null;
}

/** The least cost of a plan with other mesocycles than the one chosen, among the lengths it was chosen from. */
export function secondCost(solver: Solver, answer: Planned): number | null {
  const { directedWeeks, mesocycles } = answer.plan;
  const lengths = instanceOf(answer).lengthGroups.find((group) => group.includes(directedWeeks));
  if (!lengths) throw new Error(`A length that was not asked for: ${directedWeeks}`);
  const chosen = mesocycles.map((mesocycle) => mesocycle.weeks);
  return leastOver(solver, answer, lengths, chosen);
}

export interface Tally {
  planned: number;
  doesNotFit: number;
  readonly wrong: unknown[];
}

/** Compares the cost of every answer with a solver's, and counts what was compared. */
export function compareCosts(requests: readonly RandomRequest[], solver: Solver): Tally {
  const tally: Tally = { planned: 0, doesNotFit: 0, wrong: [] };
  for (const request of requests) {
    const answer = answerTo(request);
    tally[answer.status]++;
    const ours = answer.status === "planned" ? answer.plan.cost : null;
    const theirs = leastCost(solver, answer);
    if (!agree(ours, theirs)) tally.wrong.push({ ours, theirs, request });
  }
  return tally;
}

export const agree = (ours: number | null, theirs: number | null): boolean =>
  ours === null || theirs === null ? ours === theirs : Math.abs(ours - theirs) <= SAME;

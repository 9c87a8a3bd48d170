/** The engine's plans against HiGHS, which knows nothing of how the engine searches. */
import { agree, answerTo, compareCosts, secondCost } from "./ask";
import { drawRequests } from "./requests";
import { loadHighsSolver, type Solver } from "./solve";

let solveWithHighs: Solver;
beforeAll(async () => {
  solveWithHighs = await loadHighsSolver();
});

describe("the best plan", () => {
  it("costs what HiGHS finds, and does not fit where HiGHS finds nothing", () => {
    const { planned, doesNotFit, wrong } = compareCosts(
      [...drawRequests(320, 2027, [8, 26]), ...drawRequests(130, 2030, [1, 34])],
      solveWithHighs,
    );
    expect(wrong).toEqual([]);
    expect(planned).toBeGreaterThan(250);
    expect(doesNotFit).toBeGreaterThan(40);
  }, 300_000);

  it("is followed by the best plan with other mesocycles that HiGHS finds", () => {
    let compared = 0;
    const wrong: unknown[] = [];
    for (const request of drawRequests(120, 2028, [6, 26])) {
      const answer = answerTo(request);
      if (answer.status !== "planned") continue;
      compared++;
      const second = answer.runnersUp[0];
      const ours = second ? answer.plan.cost + second.costMore : null;
      const theirs = secondCost(solveWithHighs, answer);
      if (!agree(ours, theirs)) wrong.push({ ours, theirs, request });
    }
    expect(wrong).toEqual([]);
    expect(compared).toBeGreaterThan(60);
  }, 300_000);
});

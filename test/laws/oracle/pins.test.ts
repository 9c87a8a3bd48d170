/** Pinned requests: as good as HiGHS finds where the rules allow the pin, and where they do not, the plan says so. */
import { agree, answerTo, leastCost } from "./ask";
import { findBreaches } from "./check-plan";
import { instanceOf } from "./instance";
import { drawPinnedRequests } from "./requests";
import { loadHighsSolver } from "./solve";

it("holds a pin at the least cost, and names every rule that it makes the plan break", async () => {
  const solve = await loadHighsSolver();
  const tally = { kept: 0, broken: 0, doesNotFit: 0 };
  const wrong: unknown[] = [];
  for (const request of drawPinnedRequests(240, 2032)) {
    const answer = answerTo(request);
    const theirs = leastCost(solve, answer);
    if (answer.status === "doesNotFit") {
      tally.doesNotFit++;
      if (theirs !== null) wrong.push({ theirs, request });
      continue;
    }
    const { plan, cautions } = answer;
    const said = cautions
      .flatMap((caution) => (caution.code === "pinBreaksRule" ? [caution.rule.id] : []))
      .sort();
    const breaches = findBreaches(instanceOf(answer), plan, answer.assessment.prepRange.most);
    const broken = [...new Set(breaches.map((breach) => breach.rule))].sort();
    if (said.join() !== broken.join()) wrong.push({ said, broken, breaches, request });
    if (broken.every((rule) => rule === "M2")) {
      tally.kept++;
      if (!agree(plan.cost, theirs)) wrong.push({ ours: plan.cost, theirs, request });
    } else {
      tally.broken++;
      if (theirs !== null) wrong.push({ broken, theirs, request });
    }
  }
  expect(wrong).toEqual([]);
  expect(tally.kept).toBeGreaterThan(60);
  expect(tally.broken).toBeGreaterThan(5);
  expect(tally.doesNotFit).toBeGreaterThan(5);
}, 120_000);

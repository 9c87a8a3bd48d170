import { choosePlan, openForm } from "../../../addin/taskpane/state/form-state";
import { showPlan } from "../../../addin/taskpane/state/shown";

test("a runner-up chosen brings its own reasons, not those of the plan that costs least", () => {
  const opened = openForm("2026-11-25");
  const first = showPlan(opened);
  if (first.kind !== "planned") throw new Error(first.kind);
  const second = showPlan(choosePlan(opened, first.offers[1]!.key));
  if (second.kind !== "planned") throw new Error(second.kind);
  const chosen = second.answer.decisions.find((decision) => decision.about === "mesocycles");
  expect(chosen!.value).toEqual(second.answer.plan.mesocycles.map((mesocycle) => mesocycle.hardWeeks));
  expect(chosen!.value).not.toEqual(first.answer.plan.mesocycles.map((mesocycle) => mesocycle.hardWeeks));
  expect(second.reasons).not.toEqual(first.reasons);
});

import { planTable } from "./plan-table";
import { planLifter } from "../../../engine";
import { LIFTER_NAMES, LIFTERS, type LifterName } from "../../lifters";

/** Hard weeks that common practice names for each kind of lifter; null where none is named. */
const NAMED_HARD_WEEKS: Readonly<Record<LifterName, readonly number[] | null>> = {
  tiredGiant: [2],
  heavyMan: [3],
  middleweightWoman: [3, 4],
  smallMan: [4, 5],
  beginnerMan: [5],
  newLightWoman: [6],
  lateStarter: null,
  longHorizon: [3, 4],
};

test.each(LIFTER_NAMES)("%s", (name) => {
  const answer = planLifter(LIFTERS[name]);
  expect(answer.status).toBe(name === "lateStarter" ? "doesNotFit" : "planned");
  expect(answer.problems).toEqual([]);
  const named = NAMED_HARD_WEEKS[name];
  if (answer.status !== "invalid" && named) expect(named).toContain(answer.assessment.hardWeeks);
  expect(`\n${planTable(answer)}\n`).toMatchSnapshot();
});

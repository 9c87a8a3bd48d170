/** YALPS, a solver of another make, on a smaller number of requests. */
import { compareCosts } from "./ask";
import { drawRequests } from "./requests";
import { solveWithYalps } from "./solve";

it("costs what YALPS finds, and does not fit where YALPS finds nothing", () => {
  const { planned, doesNotFit, wrong } = compareCosts(drawRequests(120, 2029, [6, 18]), solveWithYalps);
  expect(wrong).toEqual([]);
  expect(planned).toBeGreaterThan(60);
  expect(doesNotFit).toBeGreaterThan(10);
}, 300_000);

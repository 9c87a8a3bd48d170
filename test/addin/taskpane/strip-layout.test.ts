import type { Kind, Phase, Plan, PlanWeek } from "../../../engine/index";
import { layOutStrip, STRIP } from "../../../addin/taskpane/plan/strip-layout";

/** A hand-made plan: 2 bridge weeks, 3+1, then 2 hard weeks and meet week; the bench changes phase a week later. */
const KINDS: readonly Kind[] = ["bridge", "bridge", "hard", "hard", "hard", "deload", "hard", "hard", "meet"];
const STARTS = [
  "2027-01-25",
  "2027-02-01",
  "2027-02-08",
  "2027-02-15",
  "2027-02-22",
  "2027-03-01",
  "2027-03-08",
  "2027-03-15",
  "2027-03-22",
];
const phaseAt = (index: number, change: number): Phase => (index < change ? "strength" : "peaking");
const weeks: readonly PlanWeek[] = KINDS.map((kind, index) => ({
  week: index + 1,
  startDate: STARTS[index]!,
  weeksToMeet: 8 - index,
  kind,
  mesocycle: index < 2 ? null : index < 6 ? 1 : 2,
  phase:
    index < 2 ? null : { squat: phaseAt(index, 6), bench: phaseAt(index, 7), deadlift: phaseAt(index, 6) },
}));
const lift = { hypertrophy: 0, strength: 4, peaking: 3 };
const plan: Plan = {
  meetDate: "2027-03-27",
  bridgeWeeks: 2,
  directedWeeks: 7,
  mesocycles: [
    { number: 1, hardWeeks: 3, weeks: 4, startDate: "2027-02-08" },
    { number: 2, hardWeeks: 2, weeks: 3, startDate: "2027-03-08" },
  ],
  lifts: { squat: lift, bench: { hypertrophy: 0, strength: 5, peaking: 2 }, deadlift: lift },
  weeks,
  costs: [],
  cost: 0,
};
const WEEK = 20;
const layout = layOutStrip(plan, STRIP.labels + 9 * WEEK);
const columnOf = (x: number): number => (x - STRIP.labels) / WEEK;

test("weeks stand side by side and fill the width", () => {
  expect(layout.weeks.map((week) => columnOf(week.x))).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8]);
  expect(layout.weeks.map((week) => week.kind)).toEqual(KINDS);
  expect(layout.weeks[8]!.x + layout.weeks[8]!.width).toBeCloseTo(layout.width);
});

test("a lane has one run per phase and none in bridge weeks", () => {
  const runs = (index: number) =>
    layout.lanes[index]!.runs.map((run) => [run.phase, columnOf(run.x), run.width / WEEK]);
  expect(layout.lanes.map((lane) => lane.lift)).toEqual(["squat", "bench", "deadlift"]);
  expect(runs(0)).toEqual([
    ["strength", 2, 4],
    ["peaking", 6, 3],
  ]);
  expect(runs(1)).toEqual([
    ["strength", 2, 5],
    ["peaking", 7, 2],
  ]);
});

test("mesocycles bracket their weeks and say how they end", () => {
  expect(layout.mesocycles.map(({ x, width, label }) => [columnOf(x), width / WEEK, label])).toEqual([
    [2, 4, "3 + 1"],
    [6, 3, "2 + meet"],
  ]);
});

test("a phase is a word where it fits, else its first letter", () => {
  expect(layout.lanes[0]!.runs.map((run) => run.label)).toEqual(["Strength", "Peaking"]);
  expect(layOutStrip(plan, STRIP.labels + 9 * 8).lanes[0]!.runs.map((run) => run.label)).toEqual(["S", "P"]);
});

test("months are labelled where their first week starts; a crowded opening month gives way", () => {
  const wide = layOutStrip(plan, STRIP.labels + 9 * 60);
  expect(wide.months.map((month) => month.label)).toEqual(["Jan", "Feb", "Mar"]);
  expect(layout.months.map((month) => month.label)).toEqual(["Feb"]);
  expect(layout.meetLabel).toBe("meet 27 Mar");
});

test("each week tells its number, day, kind and distance", () => {
  expect(layout.weeks[7]!.tip).toBe("Week 8, from Mon 15 Mar 2027: hard, 1 week to the meet");
  expect(layout.weeks[8]!.tip).toBe("Week 9, from Mon 22 Mar 2027: meet, meet week");
});

/** The JSON contract, key by key. */
import { lateStarter, LIFTERS, longHorizon, smallMan } from "../../lifters/index";
import { callJson, put, removeFolder } from "./call";

afterAll(removeFolder);

const KEYS = [
  "status",
  "row",
  "lifter",
  "assessment",
  "mesocycles",
  "lifts",
  "weeks",
  "runnersUp",
  "decisions",
  "cautions",
  "problems",
  "nearest",
];
const DAY = /^\d{4}-\d{2}-\d{2}$/;
const json = (content: unknown) => put(JSON.stringify(content), ".json");

test("one request gives one object, a list a list, in order", async () => {
  const one = await callJson(json(smallMan));
  expect(Object.keys(one)).toEqual(KEYS);
  expect(one).toMatchObject({ status: "planned", row: 1, lifter: smallMan["lifter"] });
  const all = await callJson(json(Object.values(LIFTERS)));
  expect(all.map((each: { lifter: string }) => each.lifter)).toEqual(
    Object.values(LIFTERS).map((each) => each["lifter"]),
  );
  expect(all.map((each: { row: number }) => each.row)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  for (const each of all) expect(Object.keys(each)).toEqual(KEYS);
  expect(await callJson(json([smallMan]))).toEqual([one]);
});

test("a plan", async () => {
  const plan = await callJson(json(longHorizon));
  expect(plan.assessment).toMatchObject({
    level: expect.any(String),
    size: expect.stringMatching(/^(light|middle|heavy)$/),
    hardWeeks: expect.any(Number),
    className: "93",
  });
  const { least, most, planned } = plan.assessment.prepWeeks;
  const total = plan.mesocycles.reduce((sum: number, each: { weeks: number }) => sum + each.weeks, 0);
  expect(planned).toBe(total);
  expect(planned).toBeLessThanOrEqual(most);
  expect(planned).toBeGreaterThanOrEqual(least);
  for (const mesocycle of plan.mesocycles) {
    expect(Object.keys(mesocycle)).toEqual(["hardWeeks", "weeks", "startDate"]);
    expect(mesocycle.weeks).toBe(mesocycle.hardWeeks + 1);
    expect(mesocycle.startDate).toMatch(DAY);
  }
  // 2027-01-04 is a Monday, and so is 2027-06-21, 24 weeks later.
  expect(plan.weeks).toHaveLength(25);
  expect(plan.weeks[0]).toEqual({
    week: 1,
    startDate: "2027-01-04",
    weeksToMeet: 24,
    kind: "bridge",
    phase: null,
  });
  expect(plan.weeks[24]).toEqual({
    week: 25,
    startDate: "2027-06-21",
    weeksToMeet: 0,
    kind: "meet",
    phase: { squat: "peaking", bench: "peaking", deadlift: "peaking" },
  });
  for (const lift of ["squat", "bench", "deadlift"]) {
    for (const phase of ["hypertrophy", "strength", "peaking"]) {
      const weeks = plan.weeks.filter(
        (each: { phase: Record<string, string> | null }) => each.phase?.[lift] === phase,
      );
      expect(plan.lifts[lift][phase]).toBe(weeks.length);
    }
  }
  for (const runnerUp of plan.runnersUp) {
    expect(Object.keys(runnerUp)).toEqual(["text", "costMore", "gains", "givesUp", "mesocycles", "lifts"]);
    expect(runnerUp.costMore).toBeGreaterThanOrEqual(0);
  }
  for (const decision of plan.decisions) {
    expect(Object.keys(decision)).toEqual(["about", "value", "text", "because", "rejected", "rules"]);
    expect(decision.text).toMatch(/^[A-Z].*: /);
  }
  expect(plan.decisions.length).toBeGreaterThan(5);
  expect(plan.cautions[0]).toEqual({ code: "training", text: expect.stringContaining("clinician") });
  expect(plan).toMatchObject({ problems: [], nearest: null });
});

test("no plan fits", async () => {
  const late = await callJson(json(lateStarter));
  expect(late).toMatchObject({ status: "doesNotFit", mesocycles: [], lifts: null, weeks: [], runnersUp: [] });
  expect(late.assessment.prepWeeks.planned).toBeNull();
  expect(Object.keys(late.nearest)).toEqual([
    "earliestMeetDate",
    "latestStartDate",
    "binding",
    "plan",
    "text",
  ]);
  expect(late.nearest.earliestMeetDate).toMatch(DAY);
  expect(late.nearest.binding.length).toBeGreaterThan(0);
  expect(Object.keys(late.nearest.plan)).toEqual(["mesocycles", "lifts", "weeks", "breaks"]);
  const fits = await callJson(json({ ...lateStarter, meetDate: late.nearest.earliestMeetDate }));
  expect(fits.status).toBe("planned");
  const started = await callJson(json({ ...lateStarter, startDate: late.nearest.latestStartDate }));
  expect(started.status).toBe("planned");
});

test("invalid requests, whatever they are", async () => {
  const list = [{ ...smallMan, bodyweightKg: "65,2", colour: "red" }, null, 5, "x", [smallMan], {}, smallMan];
  const answers = await callJson(json(list));
  expect(answers.map(({ status }: { status: string }) => status)).toEqual([
    ...Array(6).fill("invalid"),
    "planned",
  ]);
  for (const answer of answers.slice(0, 6)) {
    expect(Object.keys(answer)).toEqual(KEYS);
    expect(answer).toMatchObject({ assessment: null, lifts: null, nearest: null, weeks: [], decisions: [] });
    expect(answer.problems.length).toBeGreaterThan(0);
  }
  expect(answers[0].problems).toContainEqual({
    field: "bodyweightKg",
    given: "65,2",
    allowed: "a number from 25 to 300 kg",
    message: expect.stringMatching(/^Row 1: Bodyweight: given "65,2".*allowed: a number from 25 to 300 kg/),
    severity: "refused",
  });
  expect(answers[0].problems).toContainEqual(
    expect.objectContaining({ field: "colour", severity: "questioned" }),
  );
});

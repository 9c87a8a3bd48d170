import { LIFTS, addDays, planLifter, type Answer, type Planned } from "../../engine";
import * as lifters from "../lifters";

const plan = (input: object): Planned => {
  const answer = planLifter(input);
  if (answer.status !== "planned") throw new Error(`${answer.status}: ${JSON.stringify(answer.problems)}`);
  return answer;
};
const twelveWeeks = { startDate: "2027-02-22", meetDate: "2027-05-15" };
const man = { sex: "male", bodyweightKg: 82, trainingYears: 3, ...twelveWeeks };

describe("hard weeks come out as common practice has them", () => {
  const cases: [string, object, number[]][] = [
    ["a very advanced, heavy, explosive man with low recovery", lifters.tiredGiant, [2]],
    ["a very advanced heavy man with normal recovery", lifters.heavyMan, [3]],
    ["an advanced middleweight", lifters.middleweightWoman, [3, 4]],
    ["an advanced middleweight man", { ...man, level: "advanced" }, [3, 4]],
    ["a small intermediate", lifters.smallMan, [4, 5]],
    ["an ordinary beginner", { ...man, trainingYears: 1 }, [5]],
    ["a brand-new light woman", { ...man, sex: "female", bodyweightKg: 55, trainingYears: 0.3 }, [6]],
  ];
  test.each(cases)("%s", (_who, input, allowed) => {
    const answer = planLifter(input) as Exclude<Answer, { status: "invalid" }>;
    expect(allowed).toContain(answer.assessment.hardWeeks);
  });
});

describe("the worked preparations of the model", () => {
  const hardWeeksOf = (answer: Planned) => answer.plan.mesocycles.map((mesocycle) => mesocycle.hardWeeks);
  const split = (answer: Planned) => Object.values(answer.plan.lifts.squat);

  test("twelve weeks of an intermediate: 4+1, 3+1, 2+1 with 5/4/3", () => {
    const answer = plan({ ...man, hardWeeks: 4 });
    expect(answer.assessment.level).toBe("intermediate");
    expect(hardWeeksOf(answer)).toEqual([4, 3, 2]);
    expect(split(answer)).toEqual([5, 4, 3]);
  });

  test("fourteen weeks: 4+1, 4+1, 3+1 with 5/5/4", () => {
    const answer = plan({ ...man, hardWeeks: 4, meetDate: "2027-05-29" });
    expect(hardWeeksOf(answer)).toEqual([4, 4, 3]);
    expect(split(answer)).toEqual([5, 5, 4]);
  });
});

describe("level", () => {
  test("very advanced needs both the years and the strength", () => {
    const strong = { ...man, bodyweightKg: 92, squatKg: 280, benchKg: 190, deadliftKg: 310 };
    expect(plan({ ...strong, trainingYears: 12 }).assessment.level).toBe("very advanced");
    expect(plan({ ...strong, trainingYears: 8 }).assessment.level).toBe("advanced");
    expect(plan({ ...man, trainingYears: 12 }).assessment.level).toBe("advanced");
  });
  test("strength moves the level one step from the years at most", () => {
    const strong = { ...man, bodyweightKg: 92, squatKg: 280, benchKg: 190, deadliftKg: 310 };
    expect(plan({ ...strong, trainingYears: 1 }).assessment.level).toBe("intermediate");
  });
  test("blank bests: by years alone, with a caution that names the blanks", () => {
    const answer = plan({ ...man, squatKg: 180, deadliftKg: 200 });
    expect(answer.assessment.percentile).toBeNull();
    expect(answer.cautions).toContainEqual({ code: "blankBests", missing: ["bench"] });
  });
  test("what the coach sets goes first, and is shown", () => {
    const answer = plan({ ...man, level: "advanced", hardWeeks: 3 });
    expect(answer.assessment.level).toBe("advanced");
    expect(answer.cautions).toContainEqual({
      code: "overridden",
      field: "level",
      set: "advanced",
      assessed: "intermediate",
    });
  });
});

describe("units", () => {
  test("the same lifter in pounds gets the same plan", () => {
    const inKg = { ...man, bodyweightKg: 80, squatKg: 180, benchKg: 120, deadliftKg: 210 };
    // 1 kg is 2.2046226218 lb (NIST SP 811).
    const toLb = (kg: number) => kg * 2.2046226218;
    const inLb = {
      ...man,
      unit: "lb",
      bodyweightKg: toLb(80),
      squatKg: toLb(180),
      benchKg: toLb(120),
      deadliftKg: toLb(210),
    };
    expect(plan(inLb).plan).toEqual(plan(inKg).plan);
    expect(plan(inLb).assessment.dots).toBeCloseTo(plan(inKg).assessment.dots!, 6);
  });
  test("a class limit in whole pounds is the class of the table", () => {
    expect(plan({ ...man, unit: "lb", bodyweightKg: 181, classLimitKg: 183 }).assessment.className).toBe(
      "83",
    );
  });
});

test("an open class is a name in kilograms, in pounds too", () => {
  const woman = { ...man, sex: "female", unit: "lb", bodyweightKg: 214, classLimitKg: "84+" };
  expect(plan(woman).assessment).toMatchObject({ className: "84+", size: "heavy" });
});

describe("weeks", () => {
  const named = Object.entries<object>(lifters.LIFTERS);
  test("there are fixture lifters", () => expect(named.length).toBeGreaterThanOrEqual(6));
  test.each(named)("%s: seven days apart, numbered, counted down, meet week last", (_name, input) => {
    const answer = planLifter(input);
    if (answer.status !== "planned") return expect(answer.status).toBe("doesNotFit");
    const { weeks, mesocycles, lifts, bridgeWeeks, directedWeeks } = answer.plan;
    weeks.forEach((week, index) => {
      expect(week.week).toBe(index + 1);
      expect(week.weeksToMeet).toBe(weeks.length - 1 - index);
      expect(week.startDate).toBe(addDays(weeks[0]!.startDate, index * 7));
      expect(week.kind === "bridge").toBe(index < bridgeWeeks);
      expect(week.kind === "meet").toBe(index === weeks.length - 1);
    });
    const last = weeks.at(-1)!;
    expect(last.startDate <= answer.plan.meetDate && answer.plan.meetDate < addDays(last.startDate, 7)).toBe(
      true,
    );
    expect(mesocycles.reduce((sum, mesocycle) => sum + mesocycle.weeks, 0)).toBe(directedWeeks);
    for (const lift of LIFTS) {
      const phases = weeks.flatMap((week) => (week.phase ? [week.phase[lift]] : []));
      for (const phase of ["hypertrophy", "strength", "peaking"] as const) {
        expect(phases.filter((each) => each === phase).length).toBe(lifts[lift][phase]);
      }
    }
  });
  test("a week starts on the day the coach chooses", () => {
    // 2027-02-24 is a Wednesday, 2027-05-15 a Saturday.
    const answer = plan({ ...man, startDate: "2027-02-24", weekStart: "wednesday" });
    expect(answer.plan.weeks[0]!.startDate).toBe("2027-02-24");
    expect(answer.plan.weeks.at(-1)!.startDate).toBe("2027-05-12");
  });
});

describe("does not fit", () => {
  const short = { ...man, meetDate: "2027-03-13" };
  test("names the rules, and both days work while a day less does not", () => {
    const answer = planLifter(short);
    if (answer.status !== "doesNotFit") throw new Error(answer.status);
    expect(answer.binding.map((rule) => rule.id)).toContain("M3");
    const { earliestMeetDate, latestStartDate, plan: nearest } = answer.nearest;
    expect(planLifter({ ...short, meetDate: earliestMeetDate }).status).toBe("planned");
    expect(planLifter({ ...short, meetDate: addDays(earliestMeetDate!, -1) }).status).toBe("doesNotFit");
    expect(planLifter({ ...short, startDate: latestStartDate }).status).toBe("planned");
    expect(planLifter({ ...short, startDate: addDays(latestStartDate!, 1) }).status).toBe("doesNotFit");
    expect(nearest!.breaks.length).toBeGreaterThan(0);
    expect(nearest!.plan.directedWeeks).toBe(3);
  });
  test("more weeks asked for than there are", () => {
    const answer = planLifter({ ...man, prepWeeks: 16 });
    if (answer.status !== "doesNotFit") throw new Error(answer.status);
    expect(answer.binding.map((rule) => rule.id)).toEqual(["M2"]);
    expect(planLifter({ ...man, prepWeeks: 16, meetDate: answer.nearest.earliestMeetDate }).status).toBe(
      "planned",
    );
  });
});

describe("pins", () => {
  test("a pinned phase is kept, and a rule it breaks is said", () => {
    const answer = plan({ ...man, pins: { phaseWeeks: [{ lift: "squat", phase: "peaking", weeks: 10 }] } });
    expect(answer.plan.lifts.squat.peaking).toBe(10);
    expect(answer.cautions.flatMap((c) => (c.code === "pinBreaksRule" ? [c.rule.id] : []))).toContain("M3");
  });
  test("a pinned deload ends a mesocycle", () => {
    const answer = plan({ ...man, pins: { weekKinds: [{ weeksToMeet: 8, kind: "deload" }] } });
    expect(answer.plan.weeks.find((week) => week.weeksToMeet === 8)!.kind).toBe("deload");
  });
  test("wrong pins are problems with their path", () => {
    const answer = planLifter({ ...man, pins: { weekKinds: [{ weeksToMeet: 0, kind: "party" }] } });
    expect(answer.problems.map((problem) => problem.path)).toEqual([
      "pins.weekKinds.0.weeksToMeet",
      "pins.weekKinds.0.kind",
    ]);
  });
});

test("the costs shown add up to the cost, for the plan and its runners-up", () => {
  const answer = plan({ ...man, meetDate: "2027-08-07" });
  expect(answer.runnersUp.length).toBe(3);
  for (const { costs, cost } of [answer.plan, ...answer.runnersUp.map((runner) => runner.plan)]) {
    expect(costs.reduce((sum, item) => sum + item.cost, 0)).toBeCloseTo(cost, 9);
  }
  for (const runner of answer.runnersUp) {
    const more = runner.givesUp.reduce((sum, item) => sum + item.cost, 0);
    const less = runner.gains.reduce((sum, item) => sum + item.cost, 0);
    expect(more - less).toBeCloseTo(runner.costMore, 9);
  }
});

test("the same request always gives the same plan", () => {
  expect(planLifter(lifters.middleweightWoman)).toEqual(planLifter({ ...lifters.middleweightWoman }));
});

test("a runner-up put in the plan's place has its own reasons, and the best becomes its runner-up", () => {
  const input = { ...man, meetDate: "2027-08-07" };
  const [best, second] = [planLifter(input), planLifter(input, { choice: 1 })] as [Planned, Planned];
  expect(second.plan).toEqual(best.runnersUp[0]!.plan);
  expect(second.runnersUp[0]!.plan).toEqual(best.plan);
  expect(second.runnersUp[0]!.costMore).toBeCloseTo(-best.runnersUp[0]!.costMore, 9);
  const mesocycles = second.decisions.find((decision) => decision.about === "mesocycles");
  expect(mesocycles!.value).toEqual(second.plan.mesocycles.map((mesocycle) => mesocycle.hardWeeks));
});

test("in brief: the same plan without what led to it", () => {
  for (const input of Object.values(lifters.LIFTERS)) {
    const [full, brief] = [planLifter(input), planLifter(input, { brief: true })];
    expect(brief.status).toBe(full.status);
    if (full.status === "planned" && brief.status === "planned") {
      expect(brief.plan).toEqual(full.plan);
      expect(brief.cautions).toEqual(full.cautions);
      expect(brief.runnersUp).toEqual([]);
    }
  }
});

/** Every plan, and every runner-up, against a checker that reads nothing but the weeks; and the checker against broken plans. */
import type { Plan, PlanWeek, Planned } from "../../../engine/answer";
import { answerTo, SAME } from "./ask";
import { countCost, findBreaches, type Breach } from "./check-plan";
import { instanceOf } from "./instance";
import { drawRequests } from "./requests";

/** Rules a plan may break because the coach set them aside; of requests without pins, M2 for a length that was set. */
const saidBroken = ({ cautions }: Pick<Planned, "cautions">): string[] =>
  cautions.flatMap((caution) => (caution.code === "pinBreaksRule" ? [caution.rule.id] : []));

describe("plans of random requests", () => {
  const answers = drawRequests(1500, 2031, [3, 30]).map(answerTo);

  it("keep M1 to M7, runners-up too", () => {
    let checked = 0;
    const wrong: unknown[] = [];
    for (const answer of answers) {
      if (answer.status !== "planned") continue;
      for (const plan of [answer.plan, ...answer.runnersUp.map((each) => each.plan)]) {
        checked++;
        const breaches = findBreaches(instanceOf(answer), plan, answer.assessment.prepRange.most);
        const broken = [...new Set(breaches.map((breach) => breach.rule))];
        const isOwnLength = (answer.request.prepWeeks ?? 0) > answer.assessment.prepRange.most;
        const allowed = isOwnLength ? ["M2"] : [];
        const agrees = broken.join() === allowed.join() && saidBroken(answer).join() === allowed.join();
        if (!agrees) wrong.push({ breaches, request: answer.request });
      }
    }
    expect(wrong).toEqual([]);
    expect(checked).toBeGreaterThan(2000);
  });

  it("cost what their weeks add up to, line by line, and runners-up never less", () => {
    let checked = 0;
    for (const answer of answers) {
      if (answer.status !== "planned") continue;
      const { plan, runnersUp } = answer;
      for (const [each, cost] of [
        [plan, plan.cost] as const,
        ...runnersUp.map((other) => [other.plan, plan.cost + other.costMore] as const),
      ]) {
        checked++;
        expect(Math.abs(countCost(instanceOf(answer), each) - cost)).toBeLessThan(SAME);
        expect(Math.abs(each.costs.reduce((sum, item) => sum + item.cost, 0) - cost)).toBeLessThan(SAME);
        expect(cost).toBeGreaterThanOrEqual(plan.cost);
      }
    }
    expect(checked).toBeGreaterThan(2000);
  });

  it("have the same phase weeks and mesocycles in their summary as in their weeks", () => {
    let checked = 0;
    for (const { plan, request } of answers.filter((answer) => answer.status === "planned")) {
      checked++;
      const directed = plan.weeks.filter((week) => week.kind !== "bridge");
      expect([plan.directedWeeks, plan.bridgeWeeks]).toEqual([
        directed.length,
        plan.weeks.length - directed.length,
      ]);
      expect(plan.meetDate).toBe(request.meetDate);
      for (const [lift, split] of Object.entries(plan.lifts)) {
        const weeks = (phase: string) =>
          directed.filter((week) => week.phase![lift as "squat"] === phase).length;
        expect(split).toEqual({
          hypertrophy: weeks("hypertrophy"),
          strength: weeks("strength"),
          peaking: weeks("peaking"),
        });
      }
      for (const mesocycle of plan.mesocycles) {
        const own = directed.filter((week) => week.mesocycle === mesocycle.number);
        expect(own[0]!.startDate).toBe(mesocycle.startDate);
        expect(own.map((week) => week.kind === "hard")).toEqual([
          ...Array(mesocycle.hardWeeks).fill(true),
          false,
        ]);
        expect(own).toHaveLength(mesocycle.weeks);
      }
    }
    expect(checked).toBeGreaterThan(700);
  });

  it("that do not fit come with a nearest plan that breaks just the rules it names", () => {
    let checked = 0;
    const wrong: unknown[] = [];
    for (const answer of answers) {
      if (answer.status !== "doesNotFit" || answer.nearest.plan === null) continue;
      checked++;
      const { plan, breaks } = answer.nearest.plan;
      const broken = new Set(
        findBreaches(instanceOf(answer), plan, answer.assessment.prepRange.most).map((breach) => breach.rule),
      );
      const named = breaks.map((rule) => rule.id);
      if (named.length === 0 || [...broken].sort().join() !== [...named].sort().join()) {
        wrong.push({ broken: [...broken], named, request: answer.request });
      }
    }
    expect(wrong).toEqual([]);
    expect(checked).toBeGreaterThan(40);
  });
});

describe("the checker", () => {
  const answer = answerTo({
    sex: "male",
    bodyweightKg: 82,
    trainingYears: 3,
    startDate: "2027-01-04",
    meetDate: "2027-04-10",
    level: "intermediate",
  }) as Planned;
  const instance = instanceOf(answer);
  const rulesBroken = (
    change: (week: PlanWeek, index: number) => PlanWeek,
    weeks = answer.plan.weeks,
  ): string[] => {
    const plan: Pick<Plan, "weeks"> = { weeks: weeks.map(change) };
    return [...new Set(findBreaches(instance, plan, 14).map((breach) => breach.rule))];
  };
  const setPhase =
    (lift: "squat" | "bench", phase: "hypertrophy" | "strength" | "peaking") => (week: PlanWeek) => ({
      ...week,
      phase: { ...week.phase!, [lift]: phase },
    });
  const last = answer.plan.weeks.length - 1;

  it("finds nothing in the plan itself", () => {
    expect(answer.plan.weeks).toHaveLength(14);
    expect(rulesBroken((week) => week)).toEqual([]);
  });

  const hard = (week: PlanWeek): PlanWeek => ({ ...week, kind: "hard" });
  const cases: readonly (readonly [Breach["rule"], string, (week: PlanWeek, index: number) => PlanWeek])[] = [
    ["M1", "a deload trained through", (week) => (week.kind === "deload" ? hard(week) : week)],
    ["M1", "a deload too early", (week, i) => (i === 1 ? { ...week, kind: "deload" } : week)],
    [
      "M3",
      "no strength in one lift",
      (w) => (w.phase!.squat === "strength" ? setPhase("squat", "peaking")(w) : w),
    ],
    ["M4", "half in peaking and more", (week, i) => (i >= 4 ? setPhase("squat", "peaking")(week) : week)],
    [
      "M5",
      "hypertrophy beside peaking",
      (week, i) => (i < last ? setPhase("bench", "hypertrophy")(week) : week),
    ],
    ["M6", "strength in meet week", (week, i) => (i === last ? setPhase("bench", "strength")(week) : week)],
    ["M7", "a week without phases", (week, i) => (i === 3 ? { ...week, phase: null } : week)],
    [
      "order",
      "a phase taken up again",
      (week, i) => (i === last - 1 ? setPhase("squat", "hypertrophy")(week) : week),
    ],
    ["order", "meet week gone", (week) => (week.kind === "meet" ? hard(week) : week)],
  ];
  it.each(cases)("finds %s: %s", (rule, _what, change) => {
    expect(rulesBroken(change)).toContain(rule);
  });

  it("finds M2: more weeks than are of use", () => {
    expect(findBreaches(instance, answer.plan, 13).map((breach) => breach.rule)).toEqual(["M2"]);
  });
});

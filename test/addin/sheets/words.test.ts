import { caution, COSTS_SEEN, DECISIONS_SEEN, PROBLEM_EXAMPLES, RULE_ROWS } from "./every-code";
import {
  cautionText,
  costText,
  decisionText,
  planInWords,
  problemText,
  nearestText,
  ruleText,
  runnerUpText,
  standingText,
  sumText,
} from "../../../addin/sheets/words";
import { PROBLEM_CODES, STANDINGS, planLifter, type DoesNotFit, type Planned } from "../../../engine";
import { beginnerMan, lateStarter, longHorizon, newLightWoman, tiredGiant } from "../../lifters";

const planned = (request: object): Planned => {
  const answer = planLifter(request);
  if (answer.status !== "planned") throw new Error(JSON.stringify(answer));
  return answer;
};

/** Marks of a sentence that a value fell out of, or that shows the code behind it. */
const BROKEN = /undefined|null|NaN|\[object|\bfunction\b|[a-z][A-Z]|\.\.|\s{2}|\b\d+\.\d{2,}/;

function expectWords(text: string): void {
  expect(text.length).toBeGreaterThan(3);
  // The open data's own name is written this way.
  expect(
    text.replace(/OpenPowerlifting|gingerlifts\/opl-data|2024-08-23|CONFIG\.toml|commit \w+/g, ""),
  ).not.toMatch(BROKEN);
}

test("every decision there is has words", () => {
  const abouts = new Set(DECISIONS_SEEN.map((decision) => decision.about));
  expect([...abouts].sort()).toEqual(
    [
      "class",
      "size",
      "strength",
      "level",
      "hardWeeks",
      "prepRange",
      "prepWeeks",
      "mesocycles",
      "phaseTargets",
      "phaseWeeks",
      "calendar",
    ].sort(),
  );
  for (const decision of DECISIONS_SEEN) {
    const { title, because, rejected, sources } = decisionText(decision);
    for (const text of [title, ...because, ...rejected]) expectWords(text);
    expect(because.length).toBeGreaterThan(0);
    expect(sources).toHaveLength(decision.rules.length);
  }
});

test("every kind of cost has words", () => {
  expect([...new Set(COSTS_SEEN.map((item) => item.rule.id))].sort()).toEqual(
    RULE_ROWS.filter((row) => row.id.startsWith("cost.") && row.id !== "cost.spread")
      .map((row) => row.id)
      .sort(),
  );
  for (const item of COSTS_SEEN) expectWords(costText(item));
});

test("every rule has a name; one without is a fault of ours", () => {
  expect(RULE_ROWS.length).toBeGreaterThan(80);
  for (const rule of RULE_ROWS) expectWords(ruleText(rule));
  expect(() => ruleText({ id: "brandNewRoom.row", standing: "house", from: "" })).toThrow("brandNewRoom.row");
});

test("every caution has words", () => {
  const codes = Object.keys(caution);
  expect(codes).toHaveLength(12);
  for (const one of Object.values(caution).flat()) expectWords(cautionText(one));
});

test("the training caution names every reason to stop", () => {
  const text = cautionText({ code: "training" });
  const must = [
    "does not judge health",
    "chest pain",
    "fainting",
    "breathlessness",
    "numbness",
    "weakness",
    "bladder or bowel",
    "acute injury",
    "dark urine",
    "heart, metabolic or kidney disease",
    "pregnancy or after birth",
    "ill",
    "eating disorder",
    "Under-18s",
    "qualified adult",
    "spotters",
    "safeties",
    "losing weight or water",
  ];
  for (const words of must) expect(text).toContain(words);
});

test("every problem code has words that name the field, what was given and what is allowed", () => {
  expect(Object.keys(PROBLEM_EXAMPLES).sort()).toEqual([...PROBLEM_CODES].sort());
  for (const [code, [input, text]] of Object.entries(PROBLEM_EXAMPLES)) {
    const found = planLifter(input).problems.filter((problem) => problem.code === code);
    expect(found.map(problemText)).toEqual([text]);
  }
});

test("whatever is given is shown short and whole", () => {
  const problem = planLifter({ ...beginnerMan, bodyweightKg: "€".repeat(300) }).problems[0]!;
  expect(problemText(problem)).toBe(
    `Bodyweight: given "${"€".repeat(39)}…"; allowed: a number from 25 to 300 kg.`,
  );
  const circular: Record<string, unknown> = {};
  circular.self = circular;
  for (const given of [circular, [1], () => 1, Symbol("x"), 10n ** 60n, NaN, true]) {
    expectWords(problemText({ ...problem, given }).replace("NaN", "a slip"));
  }
});

test("hard weeks are summed where a coach can follow", () => {
  const sumOf = (answer: Planned): string => {
    const decision = answer.decisions.find((one) => one.about === "hardWeeks");
    if (decision?.about !== "hardWeeks") throw new Error("no such decision");
    return sumText(decision.given.items, decision.given.sumTenths, decision.given.assessed);
  };
  expect(sumOf(planned(newLightWoman))).toBe(
    "5.0 beginner + 0.3 light class + 0.1 woman + 0.2 brand new = 5.6, rounded to 6",
  );
  expect(sumOf(planned(tiredGiant))).toBe(
    "3.4 very advanced − 0.4 heavy class − 0.4 low recovery − 0.4 explosive = 2.2, rounded to 2",
  );
  expect(sumOf(planned(beginnerMan))).toBe("5.0 beginner = 5.0, rounded to 5");
});

test("the published counter-weights stand beside the hard weeks", () => {
  const decision = planned(newLightWoman).decisions.find((one) => one.about === "hardWeeks")!;
  const because = decisionText(decision).because.join(" ");
  expect(because).toContain(
    "every 5.6 ± 2.3 weeks, for 6.4 ± 1.7 days (Rogerson et al. 2024, Sports Medicine – Open 10:26)",
  );
  expect(because).toContain("Hunter 2016");
  expect(because).toContain("depends on the task");
});

test("a standing that is not printed is said", () => {
  const words = STANDINGS.map((standing) => standingText({ standing, from: "F" }));
  expect(words).toEqual([
    "F",
    "common practice",
    "inferred: F",
    "our choice: F",
    "from memory, unchecked: F",
  ]);
});

test("a plan in two lines", () => {
  expect(planInWords(planned(longHorizon))[0]).toMatch(
    /^10 bridge weeks and 15 weeks of directed preparation in 3 mesocycles: /,
  );
  expect(planInWords(planned(longHorizon))[1]).toMatch(
    /^Weeks: .* From the week of Mon 4 Jan 2027, directed from Mon 15 Mar 2027; meet on Sat 26 Jun 2027\.$/,
  );
});

test("runners-up say what they gain and give up; the plan chosen gives its rhythm alone", () => {
  const answer = planned(longHorizon);
  expect(answer.runnersUp.length).toBeGreaterThan(0);
  for (const runnerUp of answer.runnersUp) {
    const { title, gains, givesUp } = runnerUpText(runnerUp, answer.plan);
    for (const text of [title, ...gains, ...givesUp]) expectWords(text);
    expect(gains).toHaveLength(runnerUp.gains.length);
    expect(givesUp).toHaveLength(runnerUp.givesUp.length);
  }
  const own = runnerUpText({ plan: answer.plan, costMore: 0, gains: [], givesUp: [] }, answer.plan);
  expect(own.title).toMatch(/^[\d+, ]*\+meet$/);
});

test("what does not fit says why, and what would", () => {
  const lines = nearestText(planLifter(lateStarter) as DoesNotFit);
  for (const line of lines) expectWords(line);
  expect(lines[0]).toBe("No plan fits in the 3 weeks from Mon 26 Apr 2027 to the meet on Sat 15 May 2027.");
  expect(lines.join("\n")).toMatch(
    /In the way: .*\nThe same start fits a meet on \w{3} \d+ \w{3} 2027 or later\.\nThe same meet/,
  );
});

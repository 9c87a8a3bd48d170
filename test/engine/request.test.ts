import { planLifter, type ProblemCode } from "../../engine";

const good = {
  lifter: "Nell Arbor",
  sex: "female",
  bodyweightKg: 62.5,
  trainingYears: 3,
  squatKg: 110,
  benchKg: 62.5,
  deadliftKg: 130,
  startDate: "2027-02-22",
  meetDate: "2027-05-15",
};

const wrong: [string, object, string, ProblemCode][] = [
  ["no sex", { sex: undefined }, "sex", "missing"],
  ["blank text", { sex: "  " }, "sex", "missing"],
  ["another word", { sex: "woman" }, "sex", "notOneOf"],
  ["text for a number", { bodyweightKg: "heavy" }, "bodyweightKg", "notANumber"],
  ["a decimal comma", { bodyweightKg: "62,5" }, "bodyweightKg", "decimalComma"],
  ["a negative number", { squatKg: -100 }, "squatKg", "outOfRange"],
  ["not a number at all", { benchKg: NaN }, "benchKg", "notANumber"],
  ["half a hard week", { hardWeeks: 3.5 }, "hardWeeks", "notWhole"],
  ["seven hard weeks", { hardWeeks: 7 }, "hardWeeks", "outOfRange"],
  ["a day that is none", { meetDate: "2027-02-30" }, "meetDate", "noSuchDay"],
  ["another way to write a day", { meetDate: "15.05.2027" }, "meetDate", "notADay"],
  ["a meet before the start", { meetDate: "2027-02-21" }, "meetDate", "meetBeforeStart"],
  ["a meet in ten years", { meetDate: "2037-02-21" }, "meetDate", "meetTooFar"],
  ["a class below bodyweight", { classLimitKg: 57 }, "classLimitKg", "classBelowBodyweight"],
  ["a unit that is none", { unit: "stone" }, "unit", "notOneOf"],
  ["a list for a name", { lifter: ["Nell"] }, "lifter", "notText"],
];

test.each(wrong)("%s is refused by its field", (_what, change, path, code) => {
  const answer = planLifter({ ...good, ...change });
  expect(answer.status).toBe("invalid");
  expect(answer.problems.map((problem) => [problem.path, problem.code, problem.severity])).toContainEqual([
    path,
    code,
    "refused",
  ]);
});

const unlikely: [string, object, string, ProblemCode][] = [
  ["an absurd squat", { squatKg: 1200 }, "squatKg", "unusual"],
  ["a bench like a deadlift's", { benchKg: 400, squatKg: 100, deadliftKg: 120 }, "benchKg", "unusual"],
  ["a bench far out of proportion", { benchKg: 200, squatKg: 80, deadliftKg: 80 }, "benchKg", "unusualShare"],
  ["a name like a formula", { lifter: "=SUM(A1)" }, "lifter", "formulaSign"],
  ["a name of 300 characters", { lifter: "x".repeat(300) }, "lifter", "tooLong"],
  ["an unknown key", { shoeSize: 43 }, "shoeSize", "unknownField"],
];

test.each(unlikely)("%s is questioned and planned", (_what, change, path, code) => {
  const answer = planLifter({ ...good, ...change });
  expect(answer.status).toBe("planned");
  expect(answer.problems).toEqual([expect.objectContaining({ path, code, severity: "questioned" })]);
});

test("every problem at once", () => {
  const answer = planLifter({
    sex: "x",
    bodyweightKg: "y",
    trainingYears: -1,
    startDate: "z",
    meetDate: null,
  });
  expect(answer.problems.map((problem) => problem.path).sort()).toEqual(
    ["bodyweightKg", "meetDate", "sex", "startDate", "trainingYears"].sort(),
  );
});

test("a decimal comma comes with the value that would do", () => {
  expect(planLifter({ ...good, bodyweightKg: "62,5" }).problems[0]!.fix).toBe("62.5");
});

test.each([[null], [undefined], [42], ["text"], [[]]])("%p is no request and no crash", (input) => {
  expect(planLifter(input).status).toBe("invalid");
});

test("quotes and emoji in a name are just a name", () => {
  const answer = planLifter({ ...good, lifter: `Nell "the 🦬" O'Arbor` });
  expect(answer.problems).toEqual([]);
});

import { readTable, type LifterRow, type TableOptions } from "../../../addin/read/table";
import { tellTableProblem } from "../../../addin/read/table-problem";

const HEAD = ["Lifter", "Sex", "Bodyweight"];
const read = (cells: readonly (readonly unknown[])[], options?: TableOptions) => readTable(cells, options);
const inputs = (cells: readonly (readonly unknown[])[], options?: TableOptions) =>
  read(cells, options).rows.map((row) => (row.kind === "lifter" ? row.input : row.kind));
const problemsOf = (cells: readonly (readonly unknown[])[], options?: TableOptions) =>
  read(cells, options).rows.map((row) => (row as LifterRow).problems.map((problem) => problem.kind));

test("with a heading row, in any order, among columns of other things", () => {
  const cells = [
    ["Notes", "Bodyweight (kg)", "", "Sex", "Lifter"],
    ["x", "60.5", "?", "female", "Ann"],
    ["", 80, "", "male", "Bob"],
  ];
  expect(inputs(cells)).toEqual([
    { lifter: "Ann", sex: "female", bodyweightKg: 60.5, unit: "kg" },
    { lifter: "Bob", sex: "male", bodyweightKg: 80, unit: "kg" },
  ]);
  expect(read(cells).rows.map(({ row }) => row)).toEqual([2, 3]);
});

test("without headings columns stand in the standard order", () => {
  const row = [
    "Ann",
    "female",
    60,
    63,
    2,
    80,
    45,
    100,
    "high",
    "some",
    "no",
    46388,
    "2027-05-15",
    "advanced",
  ];
  expect(inputs([row])).toEqual([
    {
      lifter: "Ann",
      sex: "female",
      bodyweightKg: 60,
      classLimitKg: 63,
      trainingYears: 2,
      squatKg: 80,
      benchKg: 45,
      deadliftKg: 100,
      recovery: "high",
      roomInClass: "some",
      explosive: "no",
      startDate: "2027-01-01",
      meetDate: "2027-05-15",
      level: "advanced",
    },
  ]);
});

test("headings that stand elsewhere, as a row or a column; the range's own heading row is passed over", () => {
  const rows = [["female", "Ann"]];
  const wanted = [{ lifter: "Ann", sex: "female" }];
  expect(inputs(rows, { headings: [["Sex", "Lifter"]] })).toEqual(wanted);
  expect(inputs(rows, { headings: [["Sex"], ["Lifter"]] })).toEqual(wanted);
  expect(inputs([["Sex", "Lifter"], ...rows], { headings: [["Sex", "Lifter"]] })).toEqual(wanted);
  expect(inputs([["Ann", "female"]], { headings: [[null, ""]] })).toEqual(wanted);
});

test("blank rows are kept in their place, above the headings too", () => {
  expect(inputs([["", null], HEAD, [" ", "", undefined], ["Ann", "", ""]])).toEqual([
    "blank",
    { lifter: "Ann" },
  ]);
  expect(read([[], HEAD, ["Ann"]]).rows.map(({ row }) => row)).toEqual([3]);
  expect(inputs([])).toEqual([]);
  expect(inputs([HEAD])).toEqual([]);
});

test("zeros are blanks where a host hands blanks over as zeros", () => {
  const head = ["Lifter", "Sex", "Bodyweight", "Training years", "Squat", "Hard weeks", "Meet date"];
  const row = ["Ann", 0, 0, 0, 0, 0, 0];
  expect(inputs([head, row, [0, 0, 0, 0, 0, 0, 0]], { zeroIsBlank: true })).toEqual([
    { lifter: "Ann", trainingYears: 0 },
    "blank",
  ]);
  expect(inputs([head, row])[0]).toMatchObject({ sex: 0, squatKg: 0, hardWeeks: 0, meetDate: 0 });
});

describe("units", () => {
  test("a heading in lb fills a blank unit", () => {
    const cells = [
      ["Lifter", "Squat (lb)", "Bench", "Unit"],
      ["Ann", 200, 100, ""],
      ["Bob", 400, 300, "LB"],
    ];
    expect(inputs(cells)).toEqual([
      { lifter: "Ann", squatKg: 200, benchKg: 100, unit: "lb" },
      { lifter: "Bob", squatKg: 400, benchKg: 300, unit: "LB" },
    ]);
    expect(problemsOf(cells)).toEqual([[], []]);
  });

  test("a unit cell that contradicts the headings concerns its row alone", () => {
    const cells = [
      ["Lifter", "Squat (lb)", "Unit"],
      ["Ann", 200, "kg"],
      ["Bob", 200, "lb"],
    ];
    expect(problemsOf(cells)).toEqual([["unitClash"], []]);
    expect(
      problemsOf([
        ["Lifter", "Squat kg", "Unit"],
        ["Ann", 200, "lb"],
      ]),
    ).toEqual([["unitClash"]]);
  });

  test("request keys as headings leave the unit to the unit column", () => {
    const cells = [
      ["lifter", "squatKg", "unit"],
      ["Ann", 200, "lb"],
    ];
    expect(problemsOf(cells)).toEqual([[]]);
  });

  test("headings in both units concern every row", () => {
    const cells = [["Lifter", "Squat (lb)", "Bench (kg)"], ["Ann"], ["Bob"]];
    expect(problemsOf(cells)).toEqual([["mixedUnits"], ["mixedUnits"]]);
    expect(read(cells).problems.map(({ kind }) => kind)).toEqual(["mixedUnits"]);
  });
});

describe("headings that are wrong", () => {
  test("two columns of one field concern every row", () => {
    const cells = [["Lifter", "Squat", "Sex", "squat (kg)"], ["Ann"], ["Bob"]];
    expect(problemsOf(cells)).toEqual([["duplicateHeading"], ["duplicateHeading"]]);
  });

  test("an unknown heading is told once; in each row only when a known one was meant", () => {
    const cells = [["Lifter", "Sex", "Notes", "Bodywieght"], ["Ann"]];
    expect(read(cells).problems).toEqual([
      { kind: "unknownHeading", given: "Notes", meant: null },
      { kind: "unknownHeading", given: "Bodywieght", meant: "bodyweightKg" },
    ]);
    expect((read(cells).rows[0] as LifterRow).problems).toEqual([
      { kind: "unknownHeading", given: "Bodywieght", meant: "bodyweightKg" },
    ]);
  });

  test("separate headings of which none is known", () => {
    expect(problemsOf([["Ann"]], { headings: [["Nom", "Sexe"]] })).toEqual([["noKnownHeading"]]);
  });

  test("cells beyond the standard columns", () => {
    const row = ["Ann", ...Array(18).fill(""), "extra"];
    expect(problemsOf([row, ["Bob", ...Array(18).fill(""), ""]])).toEqual([["surplusCells"], []]);
  });
});

test("every message names the field, what was given and what is allowed", () => {
  const told = [
    tellTableProblem({ kind: "unknownHeading", given: "Bodywieght", meant: "bodyweightKg" }),
    tellTableProblem({ kind: "unknownHeading", given: "Notes", meant: null }),
    tellTableProblem({ kind: "noKnownHeading", given: "Nom" }),
    tellTableProblem({ kind: "duplicateHeading", field: "squatKg", headings: ["Squat", "squat kg"] }),
    tellTableProblem({ kind: "mixedUnits", kg: ["Bench kg"], lb: ["Squat lb"] }),
    tellTableProblem({ kind: "unitClash", given: "kg", headings: ["Squat lb"] }),
    tellTableProblem({ kind: "surplusCells", given: "extra" }),
  ].map(({ message }) => message);
  expect(told[0]).toMatch(/"Bodywieght".*Bodyweight/);
  expect(told[1]).toMatch(/"Notes".*Lifter, Sex/);
  expect(told[2]).toMatch(/"Nom".*allowed: Lifter/);
  expect(told[3]).toMatch(/Squat: given the headings "Squat" and "squat kg"; allowed: one column/);
  expect(told[4]).toMatch(/"Bench kg".*"Squat lb".*allowed: one unit/);
  expect(told[5]).toMatch(/"kg".*"Squat lb".*allowed/);
  expect(told[6]).toMatch(/"extra".*allowed/);
});

/** Every kind of bad row: it says what is wrong, and its neighbours answer as if it were not there. */
import { REQUEST_FIELDS } from "../../../engine/index";
import { check, hardWeeks, level, phaseOn, phaseWeeks, prepWeeks } from "../../../addin/functions/functions";
import { smallMan, tiredGiant } from "../../lifters/index";
import { HEADINGS_ROW, toCells } from "./roster";

type Change = Readonly<Record<string, unknown>>;
const changed = (change: Change) =>
  toCells(smallMan).map((cell, column) => {
    const field = REQUEST_FIELDS[column]!;
    return field in change ? change[field] : cell;
  });
const error = (text: string) => ({ type: "Error", basicValue: text });

/** Change to a good row, the field its message names, and a piece of what was given. */
const REFUSED: readonly (readonly [string, Change, string, string])[] = [
  ["no sex", { sex: "" }, "Sex", "blank"],
  ["no bodyweight", { bodyweightKg: "  " }, "Bodyweight", "blank"],
  ["no dates", { startDate: "", meetDate: "" }, "Start date", "blank"],
  ["a word for a number", { bodyweightKg: "heavy" }, "Bodyweight", '"heavy"'],
  ["a number with its unit", { squatKg: "150 kg" }, "Squat", '"150 kg"'],
  ["a decimal comma", { bodyweightKg: "65,2" }, "Bodyweight", '"65,2"'],
  ["an error value", { benchKg: "#N/A" }, "Bench", '"#N/A"'],
  ["an error value as an object", { benchKg: error("#REF!") }, "Bench", '"#REF!"'],
  ["a truth value", { deadliftKg: true }, "Deadlift", "yes"],
  ["a date that does not exist", { meetDate: "2027-02-30" }, "Meet date", '"2027-02-30"'],
  ["a date in another order", { meetDate: "15/05/2027" }, "Meet date", '"15/05/2027"'],
  ["a date in words", { startDate: "next week" }, "Start date", '"next week"'],
  ["a year for a date", { startDate: 2027 }, "Start date", "2027"],
  ["a meet before the start", { meetDate: "2027-01-01" }, "Meet date", "2027"],
  ["a meet years away", { meetDate: "2037-01-01" }, "Meet date", "2037"],
  ["a negative bodyweight", { bodyweightKg: -65 }, "Bodyweight", "-65"],
  ["a negative lift", { squatKg: -1 }, "Squat", "-1"],
  ["an absurd bodyweight", { bodyweightKg: 6520 }, "Bodyweight", "6520"],
  ["negative years", { trainingYears: -2 }, "Training years", "-2"],
  ["a class below bodyweight", { classLimitKg: 59 }, "Class limit", "59"],
  ["an unknown word", { recovery: "so-so" }, "Recovery", '"so-so"'],
  ["an unknown sex", { sex: "x" }, "Sex", '"x"'],
  ["a level that is none", { level: "elite" }, "Level", '"elite"'],
  ["too many hard weeks", { hardWeeks: 9 }, "Hard weeks", "9"],
  ["half a week", { hardWeeks: 3.5 }, "Hard weeks", "3.5"],
  ["an unknown unit", { unit: "stone" }, "Unit", '"stone"'],
  ["a unit against the headings", { unit: "lb" }, "Unit", '"lb"'],
];

const GOOD = toCells(tiredGiant);

const FUNCTIONS: readonly (readonly [string, (rows: unknown[][]) => unknown[][]])[] = [
  ["LEVEL", (rows) => level(rows)],
  ["HARDWEEKS", (rows) => hardWeeks(rows)],
  ["PREPWEEKS", (rows) => prepWeeks(rows)],
  ["PHASEWEEKS", (rows) => phaseWeeks(rows, "bench")],
  ["PHASEON", (rows) => phaseOn(rows, [["2027-04-01"]])],
  ["CHECK", (rows) => check(rows)],
];

test.each(REFUSED)("%s", (_, change, field, given) => {
  const bad = changed(change);
  const said = check([HEADINGS_ROW, GOOD, bad, GOOD])[1]![0] as string;
  expect(said).toContain(`${field}: `);
  expect(said).toContain(given);
  expect(said).toMatch(/allowed: ./);
  for (const [name, calculate] of FUNCTIONS) {
    const alone = calculate([HEADINGS_ROW, GOOD])[0]!;
    const [before, row, after] = calculate([HEADINGS_ROW, GOOD, bad, GOOD]);
    expect(before).toEqual(alone);
    expect(after).toEqual(alone);
    if (name !== "CHECK") expect(row![0]).toMatch(/^[A-Z][a-z ]+: .*allowed: /);
    expect(row!.slice(1)).toEqual(alone.slice(1).map(() => ""));
  }
});

test("all problems of a row at once in CHECK; elsewhere the first, and how many more", () => {
  const bad = changed({ sex: "x", bodyweightKg: "65,2", meetDate: "2027-02-30" });
  const said = check([bad])[0]![0] as string;
  for (const field of ["Sex: ", "Bodyweight: ", "Meet date: "]) expect(said).toContain(field);
  const [first, ...rest] = phaseWeeks([bad])[0]!;
  expect(first).toMatch(/^Sex: given "x".*And 2 more: MEETWARD\.CHECK tells all\.$/);
  expect(rest).toEqual(["", ""]);
});

test("an absurd lift is questioned, and planned all the same", () => {
  const rows = [changed({ squatKg: 900 })];
  expect(check(rows)[0]![0]).toMatch(/^Please check: Squat: given 900/);
  expect(hardWeeks(rows)[0]![0]).toEqual(expect.any(Number));
});

const NAMES: readonly (readonly [string, string, RegExp])[] = [
  ["a formula", "=1+1", /^Please check: Lifter: given "=1\+1"/],
  ["another formula", "@SUM(A1)", /^Please check: Lifter/],
  ["quotes", `Ann "the bar" O'Neil`, /^$/],
  ["emoji", "🏋️‍♀️ Ann 💪", /^$/],
  ["300 characters", "x".repeat(300), /^Please check: Lifter: given "x+…"/],
  ["nothing", "", /^$/],
];

test.each(NAMES)("a name of %s", (_, lifter, said) => {
  const rows = [changed({ lifter })];
  expect(check(rows)[0]![0]).toMatch(said);
  expect(phaseWeeks(rows)).toEqual(phaseWeeks([toCells(smallMan)]));
});

test("nothing that a person typed comes back as the beginning of a cell", () => {
  const rows = [
    ["=HYPERLINK(1)", "=2", "=3", "=4", "=5", "=6", "=7", "=8", "=9", "=10", "=11", "=12", "=13"],
  ];
  for (const [, calculate] of FUNCTIONS) {
    for (const cell of calculate(rows).flat()) expect(String(cell)).not.toMatch(/^[=+\-@]/);
  }
});

test("headings that are wrong are told in every row", () => {
  const rows = [GOOD, changed({})];
  const double = [...HEADINGS_ROW.slice(0, -1), "squat"];
  const said = phaseWeeks([double, ...rows]);
  expect(said).toHaveLength(2);
  for (const [first] of said)
    expect(first).toMatch(/^Squat: given the headings "Squat \(kg\)" and "squat"; allowed/);

  const misspelt = HEADINGS_ROW.map((heading) =>
    heading.replace("Recovery", "Recovry").replace("Unit", "Remarks"),
  );
  for (const [first] of check([misspelt, ...rows])) {
    expect(first).toMatch(/^Please check: Heading "Recovry": .*meant: Recovery\?/);
    expect(first).not.toContain("Remarks");
  }
});

test("blank rows give blanks", () => {
  const cells = phaseWeeks([HEADINGS_ROW, GOOD, ["", null, " "], GOOD]);
  expect(cells[1]).toEqual(["", "", ""]);
  expect(cells[2]).toEqual(cells[0]);
  expect(check([["", ""]])).toEqual([[""]]);
});

test("a blank that a host hands over as 0 is a missing bodyweight, and years that may be blank are questioned", () => {
  expect(check([changed({ bodyweightKg: 0 })])[0]![0]).toMatch(/^Bodyweight: .*(blank|missing|nothing)/i);
  const years = check([changed({ trainingYears: 0 })])[0]![0];
  expect(years).toMatch(/^Please check: Training years: given 0 or blank, taken as brand new/);
  expect(hardWeeks([changed({ trainingYears: 0 })])[0]![0]).toEqual(expect.any(Number));
});

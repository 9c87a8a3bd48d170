import { DEMO_FIELDS, DEMO_LIFTERS } from "../../../addin/sheets/demo-lifters";
import { demoRosterSheet, overviewSheet } from "../../../addin/sheets";
import { daySerial, ROSTER_HEADINGS } from "../../../addin/sheets/words";
import { planLifter } from "../../../engine";

const model = demoRosterSheet();
const row = (index: number) => model.cells.filter((cell) => cell.row === index);

test("headings in words, then eight lifters", () => {
  expect(model.name).toBe("Roster");
  expect(
    row(3)
      .slice(0, 13)
      .map((cell) => cell.value),
  ).toEqual([
    "Lifter",
    "Sex",
    "Bodyweight kg",
    "Class limit kg",
    "Training years",
    "Squat kg",
    "Bench kg",
    "Deadlift kg",
    "Recovery",
    "Room in class",
    "Explosive",
    "Start date",
    "Meet date",
  ]);
  expect(DEMO_LIFTERS).toHaveLength(8);
  expect(new Set(DEMO_LIFTERS.map(({ lifter }) => lifter)).size).toBe(8);
  const meets = row(4).find((cell) => cell.column === 12);
  expect(meets?.value).toBe(daySerial("2027-05-15"));
});

test("the lifters show every case: hard weeks from 2 to 6, one that does not fit, one with a bridge", () => {
  const answers = DEMO_LIFTERS.map(({ ...fields }) => planLifter(fields));
  const read = answers.flatMap((answer) => (answer.status === "invalid" ? [] : [answer]));
  expect(read).toHaveLength(8);
  expect(new Set(read.map(({ assessment }) => assessment.hardWeeks))).toEqual(new Set([2, 3, 4, 5, 6]));
  expect(answers.filter(({ status }) => status === "doesNotFit")).toHaveLength(1);
  expect(answers.filter((answer) => answer.status === "planned" && answer.plan.bridgeWeeks > 0)).toHaveLength(
    1,
  );
  expect(answers.flatMap(({ problems }) => problems)).toEqual([]);
});

test("each function stands once beside the first lifter, with a head over every column it fills", () => {
  const formulas = model.cells.filter((cell) => cell.formula !== undefined);
  expect(formulas.map((cell) => cell.formula)).toEqual([
    "=MEETWARD.LEVEL(A4:M12)",
    "=MEETWARD.HARDWEEKS(A4:M12)",
    "=MEETWARD.PHASEWEEKS(A4:M12)",
    "=MEETWARD.CHECK(A4:M12)",
  ]);
  expect(new Set(formulas.map((cell) => cell.row))).toEqual(new Set([4]));
  const heads = row(3).filter((cell) => cell.column > DEMO_FIELDS.length);
  expect(heads.map((cell) => cell.column)).toEqual([14, 15, 16, 17, 18, 19]);
  const filled = formulas.map((cell) => cell.column);
  expect(filled).toEqual([14, 15, 16, 19]);
  const below = model.cells.filter((cell) => cell.row > 4 && cell.column > DEMO_FIELDS.length);
  expect(below.every((cell) => cell.value === undefined && cell.formula === undefined)).toBe(true);
});

test("a heading for every field a request may have", () => {
  expect(new Set(Object.values(ROSTER_HEADINGS)).size).toBe(Object.keys(ROSTER_HEADINGS).length);
  expect(overviewSheet([], []).cells.length).toBeGreaterThan(0);
});

/** The week grid's formulas, worked out by a real spreadsheet program after a coach's edits. */
import type ExcelJS from "exceljs";
import { planSheets } from "../../../addin/sheets";
import { COLUMNS, FIRST_WEEK_ROW, layGrid, MEET_DAY, WEEK_START } from "../../../addin/sheets/grid-layout";
import type { CellValue, SheetModel } from "../../../addin/sheets/model";
import { daySerial } from "../../../addin/sheets/words";
import { toXlsx } from "../../../addin/workbook/file";
import { LIFTS, PHASES, addDays, planLifter, type Planned } from "../../../engine";
import { readWorkbook, shownValue, SpreadsheetProgram } from "../../hosts/spreadsheet/program";
import { LIFTER_NAMES, LIFTERS, smallMan } from "../../lifters";

jest.setTimeout(600_000);

const planned = (request: object): Planned => {
  const answer = planLifter(request);
  if (answer.status !== "planned") throw new Error(JSON.stringify(answer));
  return answer;
};
const small = planned(smallMan);
const layout = layGrid(small.plan.weeks.length);
const meetWeek = small.plan.weeks.length;

interface Edit {
  readonly row: number;
  readonly column: number;
  /** Null to empty the cell. */
  readonly value: CellValue | null;
}

const inWeek = (week: number, column: keyof typeof COLUMNS, value: CellValue | null): Edit => ({
  row: FIRST_WEEK_ROW + week - 1,
  column: COLUMNS[column],
  value,
});

const PLANNED = LIFTER_NAMES.flatMap((name) => {
  const answer = planLifter(LIFTERS[name]);
  return answer.status === "planned" ? [{ name, answer }] : [];
});

/** The plan edited here: 5+1, 5+1, 3+meet over 16 weeks, hypertrophy to week 6, strength to week 12. */
const EDITS: Readonly<
  Record<string, { readonly edits: readonly Edit[]; readonly says: Readonly<Record<number, string>> }>
> = {
  "peaks early": {
    edits: [inWeek(3, "squat", "peaking")],
    says: {
      3: "A lift is in hypertrophy while another peaks: two phases apart.",
      4: "Squat goes back a phase.",
    },
  },
  "goes back": {
    edits: [inWeek(10, "bench", "hypertrophy"), inWeek(14, "deadlift", "strength")],
    says: { 10: "Bench goes back a phase.", 14: "Deadlift goes back a phase." },
  },
  "no deload": {
    edits: [inWeek(6, "kind", "hard")],
    says: Object.fromEntries([7, 8, 9, 10, 11].map((week) => [week, "More than 6 hard weeks in a row."])),
  },
  "meet not peaking": {
    edits: [
      inWeek(meetWeek, "squat", "strength"),
      inWeek(meetWeek - 1, "squat", "strength"),
      inWeek(meetWeek - 2, "squat", "strength"),
      inWeek(meetWeek - 3, "squat", "strength"),
    ],
    says: { [meetWeek]: "Meet week: not every lift is in peaking." },
  },
  "no meet week": {
    edits: [inWeek(meetWeek, "kind", "hard")],
    says: { [meetWeek]: "The last week is not meet week." },
  },
  "meet too soon": {
    edits: [inWeek(meetWeek - 1, "kind", "meet")],
    says: { [meetWeek - 1]: "Meet week is not the last week." },
  },
  "no phase": {
    edits: [inWeek(2, "bench", null)],
    says: { 2: "A lift has no phase." },
  },
  "late bridge": {
    edits: [inWeek(8, "kind", "bridge")],
    says: { 8: "A bridge week inside the preparation." },
  },
};
const MOVES: Readonly<Record<string, { readonly edits: readonly Edit[]; readonly meetWeekStart: string }>> = {
  "meet later": {
    edits: [{ ...MEET_DAY, value: daySerial("2027-05-29") }],
    meetWeekStart: "2027-05-24",
  },
  "meet on sunday": {
    edits: [{ ...MEET_DAY, value: daySerial("2027-05-16") }],
    meetWeekStart: "2027-05-10",
  },
  "meet on monday": {
    edits: [{ ...MEET_DAY, value: daySerial("2027-05-17") }],
    meetWeekStart: "2027-05-17",
  },
  "saturday weeks": {
    edits: [{ ...WEEK_START, value: "Saturday" }],
    meetWeekStart: "2027-05-15",
  },
  "sunday weeks": {
    edits: [{ ...WEEK_START, value: "Sunday" }],
    meetWeekStart: "2027-05-09",
  },
};

function edited(name: string, answer: Planned, edits: readonly Edit[]): SheetModel {
  const model = planSheets(answer, [])[0]!;
  const cells = model.cells.map((cell) => {
    const edit = edits.find(({ row, column }) => row === cell.row && column === cell.column);
    if (!edit) return cell;
    const { row, column, style } = cell;
    return edit.value === null ? { row, column, style } : { row, column, style, value: edit.value };
  });
  return { ...model, name, cells: cells.map((cell) => ({ ...cell, style: cell.style! })) };
}

let workbook: ExcelJS.Workbook;

beforeAll(async () => {
  const models = [
    ...PLANNED.map(({ name, answer }) => edited(name, answer, [])),
    ...Object.entries({ ...EDITS, ...MOVES }).map(([name, { edits }]) => edited(name, small, edits)),
  ];
  const program = await SpreadsheetProgram.start();
  try {
    workbook = await readWorkbook(
      await program.convert(await toXlsx(models, { title: "Edited plans" }), "xlsx"),
    );
  } finally {
    await program.stop();
  }
});

function shown(sheet: string, row: number, column: number): ExcelJS.CellValue {
  const found = workbook.getWorksheet(sheet);
  if (!found) throw new Error(`no sheet ${sheet}`);
  return shownValue(found.getCell(row + 1, column + 1));
}

const isoDay = (value: ExcelJS.CellValue): string =>
  value instanceof Date ? value.toISOString().slice(0, 10) : `no date: ${JSON.stringify(value)}`;

const checksOf = (sheet: string, weeks: number): Record<number, string> => {
  const said = Array.from({ length: weeks }, (_, index) => {
    return [index + 1, String(shown(sheet, FIRST_WEEK_ROW + index, COLUMNS.check) ?? "")] as const;
  });
  return Object.fromEntries(said.filter(([, text]) => text !== ""));
};

test("there is something to check", () => {
  expect(PLANNED.length).toBeGreaterThanOrEqual(6);
  expect(small.plan.mesocycles.map(({ hardWeeks }) => hardWeeks)).toEqual([5, 5, 3]);
});

test.each(PLANNED.map(({ name, answer }) => [name, answer] as const))("%s as planned", (name, answer) => {
  const { weeks, lifts, directedWeeks } = answer.plan;
  expect(checksOf(name, weeks.length)).toEqual({});
  weeks.forEach((week, index) => {
    const row = FIRST_WEEK_ROW + index;
    expect(shown(name, row, COLUMNS.week)).toBe(week.week);
    expect(isoDay(shown(name, row, COLUMNS.starts))).toBe(week.startDate);
    const lastDay = week.weeksToMeet === 0 ? answer.plan.meetDate : addDays(week.startDate, 6);
    expect(isoDay(shown(name, row, COLUMNS.ends))).toBe(lastDay);
    expect(shown(name, row, COLUMNS.toMeet)).toBe(week.weeksToMeet);
    expect(shown(name, row, COLUMNS.mesocycle) || null).toBe(week.mesocycle);
  });
  const at = layGrid(weeks.length);
  expect(shown(name, at.totalsRow, COLUMNS.check)).toBe("Every week passes the checks.");
  for (const lift of LIFTS) {
    PHASES.forEach((phase, index) => {
      expect(shown(name, at.totalsRow + 1 + index, COLUMNS[lift])).toBe(lifts[lift][phase]);
      expect(shown(name, at.sharesRow + index, COLUMNS[lift])).toBeCloseTo(
        lifts[lift][phase] / directedWeeks,
      );
    });
    expect(shown(name, at.directedRow, COLUMNS[lift])).toBe(directedWeeks);
  }
  expect(shown(name, 0, 0)).toBe(`Week plan: ${answer.request.lifter}`);
  expect(shown(name, 1, 0)).toMatch(new RegExp(`^Read first, row ${at.readFirstRow + 1}: `));
});

test.each(Object.entries(EDITS))("%s: the check says so, and only there", (name, { says }) => {
  expect(checksOf(name, meetWeek)).toEqual(says);
  const count = Object.keys(says).length;
  expect(shown(name, layout.totalsRow, COLUMNS.check)).toBe(`Weeks to look at: ${count}`);
});

test.each(Object.entries(MOVES))("%s: every week's dates follow", (name, { meetWeekStart }) => {
  small.plan.weeks.forEach((week, index) => {
    const start = addDays(meetWeekStart, -7 * week.weeksToMeet);
    expect(isoDay(shown(name, FIRST_WEEK_ROW + index, COLUMNS.starts))).toBe(start);
  });
});

test("no deload renumbers the mesocycles that follow", () => {
  const numbers = Array.from({ length: meetWeek }, (_, index) =>
    shown("no deload", FIRST_WEEK_ROW + index, COLUMNS.mesocycle),
  );
  expect(numbers).toEqual([...Array(12).fill(1), ...Array(4).fill(2)]);
});

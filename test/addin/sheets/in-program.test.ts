/** The week grid's formulas, worked out by a real spreadsheet program after a coach's edits. */
import type ExcelJS from "exceljs";
import { EDITED_SHEETS, EDITS, meetWeek, MOVES, PLANNED, small } from "./coach-edits";
import { COLUMNS, FIRST_WEEK_ROW, layGrid } from "../../../addin/sheets/grid-layout";
import { toXlsx } from "../../../addin/workbook/file";
import { LIFTS, PHASES, addDays } from "../../../engine";
import { readWorkbook, shownValue, SpreadsheetProgram } from "../../hosts/spreadsheet/program";

jest.setTimeout(600_000);

const layout = layGrid(small.plan.weeks.length);
let workbook: ExcelJS.Workbook;

beforeAll(async () => {
  const program = await SpreadsheetProgram.start();
  try {
    workbook = await readWorkbook(
      await program.convert(await toXlsx(EDITED_SHEETS, { title: "Edited plans" }), "xlsx"),
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

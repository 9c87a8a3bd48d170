/** The weeks themselves: inputs the coach changes, and formulas that follow. */
import { LIFTS, WEEKDAYS, type PlanWeek } from "../../engine";
import { cellRef } from "./cell-ref";
import { checkFormula } from "./check-formula";
import {
  COLUMNS,
  FIRST_WEEK_ROW,
  HEAD_ROW,
  liftColumn,
  MEET_DAY,
  WEEK_START,
  type GridLayout,
} from "./grid-layout";
import type { Cell } from "./model";

const HEADS = [
  "Week",
  "Starts",
  "Ends",
  "To meet",
  "Meso",
  "Kind",
  "Squat",
  "Bench",
  "Deadlift",
  "Check",
  "Notes",
] as const;

export function headCells(): Cell[] {
  return HEADS.map((value, column) => ({
    row: HEAD_ROW,
    column,
    value,
    style: column >= COLUMNS.check ? "headLeft" : "head",
  }));
}

/** The number from 1 (Sunday) to 7 of the weekday named in the week-start cell, by its first three letters. */
const LETTERS = WEEKDAYS.map((day) => day.slice(0, 3)).join("");
const weekStartCell = cellRef(WEEK_START.row, WEEK_START.column, "both");
const WEEK_START_NUMBER = `(SEARCH(LEFT(${weekStartCell},3),"${LETTERS}")+2)/3`;
const meetDay = cellRef(MEET_DAY.row, MEET_DAY.column, "both");
/** WEEKDAY keeps this right in workbooks that count their days from 1904. */
const MEET_WEEK_START = `${meetDay}-MOD(WEEKDAY(${meetDay})-${WEEK_START_NUMBER},7)`;

export function weekCells(week: PlanWeek, layout: GridLayout): Cell[] {
  const row = FIRST_WEEK_ROW + week.week - 1;
  const at = (column: number) => cellRef(row, column);
  // Counted over the kinds, so that a row added or taken out renumbers every week.
  const above = `${cellRef(FIRST_WEEK_ROW, COLUMNS.kind, "row")}:${at(COLUMNS.kind)}`;
  const below = `${at(COLUMNS.kind)}:${cellRef(layout.lastWeekRow, COLUMNS.kind, "row")}`;
  const before = `${cellRef(HEAD_ROW, COLUMNS.kind, "row")}:${cellRef(row - 1, COLUMNS.kind)}`;
  const mesocycle = `=IF(${at(COLUMNS.kind)}="bridge","",COUNTIF(${before},"deload")+1)`;
  return [
    { row, column: COLUMNS.week, formula: `=ROWS(${above})`, style: "number" },
    {
      row,
      column: COLUMNS.starts,
      formula: `=${MEET_WEEK_START}-7*${at(COLUMNS.toMeet)}`,
      style: "date",
    },
    { row, column: COLUMNS.ends, formula: `=MIN(${at(COLUMNS.starts)}+6,${meetDay})`, style: "date" },
    { row, column: COLUMNS.toMeet, formula: `=ROWS(${below})-1`, style: "number" },
    { row, column: COLUMNS.mesocycle, formula: mesocycle, style: "number" },
    { row, column: COLUMNS.kind, value: week.kind, style: "inputWord" },
    ...LIFTS.map((lift): Cell => {
      const cell = { row, column: liftColumn(lift), style: "inputWord" } as const;
      return week.phase === null ? cell : { ...cell, value: week.phase[lift] };
    }),
    { row, column: COLUMNS.check, formula: checkFormula(row), style: "check" },
    { row, column: COLUMNS.notes, style: "inputText" },
  ];
}

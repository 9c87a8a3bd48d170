/** Where everything stands on a week grid. Rows and columns count from 0. */
import { LIFTS, PHASES, type Lift } from "../../engine";
import type { CellRange } from "./model";

export const COLUMNS = {
  week: 0,
  starts: 1,
  ends: 2,
  toMeet: 3,
  mesocycle: 4,
  kind: 5,
  squat: 6,
  bench: 7,
  deadlift: 8,
  check: 9,
  notes: 10,
} as const;

/** Characters. */
export const WIDTHS: readonly number[] = [7, 16, 16, 8, 7, 10, 15, 15, 15, 34, 30];
export const FULL_WIDTH = WIDTHS.reduce((sum, width) => sum + width, 0);
export const LAST_COLUMN = COLUMNS.notes;

export const TITLE_ROW = 0;
export const POINTER_ROW = 1;
export const FACTS_ROW = 2;
export const FACT_ROWS = 3;
export const GAP_ROW = FACTS_ROW + FACT_ROWS;
export const HEAD_ROW = GAP_ROW + 1;
export const FIRST_WEEK_ROW = HEAD_ROW + 1;

/** Three facts a row: the columns of each label and of each value. */
export const FACT_COLUMNS = [
  { label: [0, 1], value: [2, 3] },
  { label: [4, 5], value: [6, 6] },
  { label: [7, 7], value: [8, 8] },
] as const;

export const MEET_DAY = { row: FACTS_ROW, column: 6 } as const;
export const WEEK_START = { row: FACTS_ROW, column: 8 } as const;

export interface GridLayout {
  /** Rows of weeks. */
  readonly weeks: number;
  readonly lastWeekRow: number;
  readonly totalsRow: number;
  /** Row of the count of directed weeks. */
  readonly directedRow: number;
  readonly sharesRow: number;
  readonly readFirstRow: number;
}

export function layGrid(weeks: number): GridLayout {
  const lastWeekRow = FIRST_WEEK_ROW + weeks - 1;
  const totalsRow = lastWeekRow + 2;
  const directedRow = totalsRow + PHASES.length + 1;
  const sharesRow = directedRow + 1;
  return {
    weeks,
    lastWeekRow,
    totalsRow,
    directedRow,
    sharesRow,
    readFirstRow: sharesRow + PHASES.length + 2,
  };
}

/** A column's cells over all weeks. */
export function weekColumn(layout: GridLayout, column: number, columns = 1): CellRange {
  return { row: FIRST_WEEK_ROW, column, rows: layout.weeks, columns };
}

export const liftColumn = (lift: Lift): number => COLUMNS[lift];
export const FIRST_LIFT_COLUMN = liftColumn(LIFTS[0]);

/** Part of one row, both columns included. */
export function acrossRow(row: number, from: number, to: number): CellRange {
  return { row, column: from, rows: 1, columns: to - from + 1 };
}

/**
 * A range of cells as lifters: one plain object a row, for the engine to judge. With a heading row the columns
 * come in any order; without one they stand in the order of REQUEST_FIELDS.
 */
import { REQUEST_FIELDS, type RequestField, type Unit } from "../../engine/index";
import { isBlankCell, plainContent, readCell } from "./cell-value";
import { readColumns, type Columns } from "./columns";
import { isHeadingRow } from "./headings";
import { isRefused, type TableProblem } from "./table-problem";

export interface LifterRow {
  readonly kind: "lifter";
  /** The row's number in the table, its heading row counted; the first is 1. */
  readonly row: number;
  /** Keys of REQUEST_FIELDS, blanks left out. */
  readonly input: Readonly<Record<string, unknown>>;
  /** What is wrong before the engine has looked: the table's refusals and the row's own problems. */
  readonly problems: readonly TableProblem[];
}

export interface BlankRow {
  readonly kind: "blank";
  readonly row: number;
}

export interface Table {
  /** One entry for every row below the headings. */
  readonly rows: readonly (LifterRow | BlankRow)[];
  /** What is wrong with the table as a whole, once. */
  readonly problems: readonly TableProblem[];
  /** How many rows stand above the first of `rows`: blank ones and the heading row. */
  readonly above: number;
}

export interface TableOptions {
  /** Headings that stand elsewhere: one row or one column of cells. */
  readonly headings?: readonly (readonly unknown[])[] | null;
  /** Some hosts hand a blank cell over as 0, which is then blank where 0 is no possible value. */
  readonly zeroIsBlank?: boolean;
}

export function readTable(cells: readonly (readonly unknown[])[], options: TableOptions = {}): Table {
  const zeroIsBlank = options.zeroIsBlank ?? false;
  const first = cells.findIndex((row) => !isBlankRow(row, zeroIsBlank));
  const hasHeadingRow = first !== -1 && isHeadingRow(cells[first]!);
  const above = hasHeadingRow ? first + 1 : 0;
  const headings = flatHeadings(options.headings) ?? (hasHeadingRow ? cells[first]! : null);
  const columns = readColumns(headings);
  const rows = cells.slice(above).map((row, index) => {
    const number = above + index + 1;
    return isBlankRow(row, zeroIsBlank)
      ? ({ kind: "blank", row: number } as const)
      : readRow(row, number, columns, zeroIsBlank);
  });
  return { rows, problems: columns.problems, above };
}

function isBlankRow(row: readonly unknown[], zeroIsBlank: boolean): boolean {
  return row.every((cell) => isBlankCell(cell) || (zeroIsBlank && cell === 0));
}

/** A heading range of a single row or column as one list; null where there is none. */
function flatHeadings(headings: TableOptions["headings"]): readonly unknown[] | null {
  const flat = (headings ?? []).flat();
  return flat.every(isBlankCell) ? null : flat;
}

function readRow(cells: readonly unknown[], row: number, columns: Columns, zeroIsBlank: boolean): LifterRow {
  const input: Record<string, unknown> = {};
  for (const { field, index } of columns.known) {
    const cell = cells[index];
    if (zeroIsBlank && cell === 0 && !takesZero(field)) continue;
    const value = readCell(field, cell);
    if (value !== null) input[field] = value;
  }
  const problems = columns.problems.filter(
    (problem) => isRefused(problem) || problem.kind === "unknownHeading",
  );
  if (zeroIsBlank && input["trainingYears"] === 0) problems.push({ kind: "zeroYears" });
  const clash = settleUnit(input, columns);
  if (clash !== null) problems.push(clash);
  const surplus = columns.isStandard
    ? cells.slice(REQUEST_FIELDS.length).find((cell) => !isBlankCell(cell))
    : null;
  if (surplus !== null && surplus !== undefined && !(zeroIsBlank && surplus === 0)) {
    problems.push({ kind: "surplusCells", given: plainContent(surplus) });
  }
  return { kind: "lifter", row, input, problems: problems.filter(isSaidInRow) };
}

/** A lifter of 0 years is new. Nowhere else is 0 a value. */
const takesZero = (field: RequestField): boolean => field === "trainingYears";

/** An unknown heading is worth saying in every row only when a known one was meant. */
const isSaidInRow = (problem: TableProblem): boolean =>
  problem.kind !== "unknownHeading" || problem.meant !== null;

/** Fills a blank unit from the headings; a unit cell that contradicts them is a problem. */
function settleUnit(input: Record<string, unknown>, columns: Columns): TableProblem | null {
  const said: Unit | null = columns.unit;
  if (said === null) return null;
  const given = input["unit"];
  if (given === undefined) {
    input["unit"] = said;
    return null;
  }
  const isClash = typeof given === "string" && given.toLowerCase() === (said === "kg" ? "lb" : "kg");
  return isClash ? { kind: "unitClash", given, headings: columns.unitHeadings } : null;
}

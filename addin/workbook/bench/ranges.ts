import type { IRange } from "@univerjs/core";
import type { CellRange } from "../../sheets/model";

/** The grid names the last row and column, the sheet model counts them. */
export function toGridRange(range: CellRange): IRange {
  return {
    startRow: range.row,
    startColumn: range.column,
    endRow: range.row + range.rows - 1,
    endColumn: range.column + range.columns - 1,
  };
}

export function fromGridRange(range: IRange): CellRange {
  return {
    row: range.startRow,
    column: range.startColumn,
    rows: range.endRow - range.startRow + 1,
    columns: range.endColumn - range.startColumn + 1,
  };
}

/** The letters over a column counted from 0: A … Z, AA … */
export function columnLetters(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : columnLetters(Math.floor(column / 26) - 1) + letter;
}

/** `'Sheet name'!$A$1:$B$2`, as a defined name refers to it. */
export function toReference(sheetName: string, range: CellRange): string {
  const corner = (row: number, column: number) => `$${columnLetters(column)}$${row + 1}`;
  const first = corner(range.row, range.column);
  const last = corner(range.row + range.rows - 1, range.column + range.columns - 1);
  const sheet = `'${sheetName.replaceAll("'", "''")}'`;
  return first === last ? `${sheet}!${first}` : `${sheet}!${first}:${last}`;
}

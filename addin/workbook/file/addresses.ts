/** Cell addresses as a file writes them. */
import type { CellRange } from "../../sheets/model";

/** "A" for column 0. */
export function columnName(column: number): string {
  const before = Math.floor(column / 26);
  return (before > 0 ? columnName(before - 1) : "") + String.fromCharCode(65 + (column % 26));
}

/** "B3" for row 2, column 1; "$B$3" when absolute. */
export function cellAddress(row: number, column: number, absolute = false): string {
  return absolute ? `$${columnName(column)}$${row + 1}` : `${columnName(column)}${row + 1}`;
}

/** "B3:C9"; with dollar signs when absolute. */
export function rangeAddress({ row, column, rows, columns }: CellRange, absolute = false): string {
  const last = cellAddress(row + rows - 1, column + columns - 1, absolute);
  return `${cellAddress(row, column, absolute)}:${last}`;
}

/** A sheet's name as a formula quotes it. */
export const quotedSheetName = (name: string): string => `'${name.replaceAll("'", "''")}'`;

/** Cell addresses as formulas write them. Rows and columns count from 0, as in the model. */
import type { CellRange } from "./model";

/** "A" for 0, "AA" for 26. */
export function columnLetters(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : columnLetters(Math.floor(column / 26) - 1) + last;
}

/** How much of an address stays when a formula is moved: "$" marks what stays. */
export type Fixed = "none" | "row" | "column" | "both";

/** "B9", "B$9", "$B9" or "$B$9" */
export function cellRef(row: number, column: number, fixed: Fixed = "none"): string {
  const beforeColumn = fixed === "column" || fixed === "both" ? "$" : "";
  const beforeRow = fixed === "row" || fixed === "both" ? "$" : "";
  return `${beforeColumn}${columnLetters(column)}${beforeRow}${row + 1}`;
}

/** "A4:M12" */
export function rangeRef({ row, column, rows, columns }: CellRange, fixed: Fixed = "none"): string {
  return `${cellRef(row, column, fixed)}:${cellRef(row + rows - 1, column + columns - 1, fixed)}`;
}

import { CellValueType } from "@univerjs/core";
import type { ICellData, Nullable } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import type { CellValue } from "../../sheets/model";
import type { Grid } from "./grid";

/** A cell of the grid as it stands now. */
export interface GridCell {
  readonly row: number;
  readonly column: number;
  readonly data: ICellData;
  /** Its content, the result of its formula, or what a neighbour's formula spilled into it; undefined when blank. */
  readonly value: CellValue | undefined;
  /** Beginning with "="; undefined in a cell that holds a value. */
  readonly formula: string | undefined;
  /** It holds a formula whose result fills more cells than its own. */
  readonly spills: boolean;
}

/** Every cell of a sheet that holds something or looks like something, row by row. */
export function readCells(grid: Grid, sheetId: string): GridCell[] {
  const sheet = grid.book.getSheetBySheetId(sheetId);
  if (!sheet) throw new Error(`The grid has no sheet ${sheetId}. Maybe it was deleted meanwhile.`);
  const matrix = sheet.getSheet().getCellMatrix();
  const formulas = grid.univer.__getInjector().get(FormulaDataModel);
  const spilled = formulas.getArrayFormulaCellData()[grid.book.getId()]?.[sheetId] ?? {};
  const spillRanges = formulas.getArrayFormulaRange()[grid.book.getId()]?.[sheetId] ?? {};
  const cells: GridCell[] = [];
  for (const row of rowNumbers(matrix.getMatrix(), spilled)) {
    for (const column of rowNumbers(matrix.getMatrix()[row] ?? {}, spilled[row] ?? {})) {
      const data = matrix.getValue(row, column) ?? {};
      const formula = data.f || data.si ? sheet.getRange(row, column).getFormula() : undefined;
      const shown = formula || !isBlank(data) ? data : (spilled[row]?.[column] ?? data);
      const range = formula ? spillRanges[row]?.[column] : undefined;
      const spills = !!range && (range.endRow > range.startRow || range.endColumn > range.startColumn);
      cells.push({ row, column, data, value: valueOf(shown), formula: formula || undefined, spills });
    }
  }
  return cells;
}

function rowNumbers(one: object, other: object): number[] {
  return [...new Set([...Object.keys(one), ...Object.keys(other)].map(Number))].sort((a, b) => a - b);
}

function isBlank(data: ICellData): boolean {
  return valueOf(data) === undefined;
}

/** The plain value of a cell; text with several formats in it becomes plain text. */
export function valueOf(data: Nullable<ICellData>): CellValue | undefined {
  const rich = data?.p?.body?.dataStream;
  if (rich !== undefined) return rich.replace(/\r\n$/, "").replaceAll("\r", "\n") || undefined;
  const value = data?.v;
  if (value === undefined || value === null || value === "") return undefined;
  if (data?.t === CellValueType.BOOLEAN) return Boolean(Number(value) || value === true);
  if (data?.t === CellValueType.STRING || data?.t === CellValueType.FORCE_STRING) return String(value);
  return value;
}

import { BooleanNumber, CellValueType } from "@univerjs/core";
import type { ICellData, IFreeze, IStyleData, IWorksheetData } from "@univerjs/core";
import type { Cell, CellValue, SheetModel } from "../../sheets/model";
import { heightToPixels, widthToPixels } from "./lengths";
import { PLAIN_SIZE_IN_GRID, toGridStyle } from "./looks";
import { toGridRange } from "./ranges";

/** What travels along with a painted sheet although the grid itself has no use for it. */
export interface SheetKeepsake {
  readonly print: SheetModel["print"];
}

/** What travels along with a cell, so that it moves when rows are inserted. */
export interface CellKeepsake {
  readonly note?: string;
}

const SPARE_ROWS = 30;
const SPARE_COLUMNS = 6;
const LEAST_ROWS = 60;
const LEAST_COLUMNS = 20;

/** The id of a named style in the grid; each sheet has its own names. */
export function styleId(sheetId: string, styleName: string): string {
  return `${sheetId}/${styleName}`;
}

/** The model's styles under the ids that its cells in the grid refer to. */
export function toGridStyles(model: SheetModel, sheetId: string): Record<string, IStyleData> {
  return Object.fromEntries(
    Object.entries(model.styles).map(([name, look]) => [
      styleId(sheetId, name),
      // Drop-down cells look past the sheet's plain size.
      { fs: PLAIN_SIZE_IN_GRID, ...toGridStyle(look) },
    ]),
  );
}

/** Everything of the model that the grid takes in one piece; throws when a cell names an unknown style. */
export function toGridSheet(model: SheetModel, sheetId: string): Partial<IWorksheetData> {
  const cellData = cellsOf(model, sheetId);
  const rowCount = Math.max(0, ...Object.keys(cellData).map(Number)) + 1;
  const columnCount = Math.max(model.columns.length, ...model.cells.map((cell) => cell.column + 1));
  return {
    id: sheetId,
    name: model.name,
    rowCount: Math.max(LEAST_ROWS, rowCount + SPARE_ROWS),
    columnCount: Math.max(LEAST_COLUMNS, columnCount + SPARE_COLUMNS),
    defaultStyle: { fs: PLAIN_SIZE_IN_GRID },
    cellData,
    columnData: Object.fromEntries(
      model.columns.map(({ width }, column) => [column, { w: widthToPixels(width), custom: { width } }]),
    ),
    rowData: Object.fromEntries(
      Object.entries(model.rowHeights).map(([row, height]) => [
        row,
        { h: heightToPixels(height), ia: BooleanNumber.FALSE, custom: { height } },
      ]),
    ),
    mergeData: model.merges.map(toGridRange),
    freeze: toGridFreeze(model.freeze),
    custom: { print: model.print } satisfies SheetKeepsake,
  };
}

function cellsOf(model: SheetModel, sheetId: string): Record<number, Record<number, ICellData>> {
  const rows: Record<number, Record<number, ICellData>> = {};
  for (const cell of model.cells) (rows[cell.row] ??= {})[cell.column] = cellOf(cell, model, sheetId);
  for (const { row, column, text } of model.notes) {
    const columns = (rows[row] ??= {});
    columns[column] = { ...columns[column], custom: { note: text } satisfies CellKeepsake };
  }
  return rows;
}

function cellOf(cell: Cell, model: SheetModel, sheetId: string): ICellData {
  if (cell.style !== undefined && !(cell.style in model.styles)) {
    throw new Error(
      `Cell ${cell.row},${cell.column} of "${model.name}" has the style "${cell.style}", which the sheet lacks. ` +
        `Maybe it is misspelt: ${Object.keys(model.styles).join(", ")}.`,
    );
  }
  return {
    ...(cell.formula !== undefined
      ? { f: cell.formula }
      : cell.value !== undefined && toGridValue(cell.value)),
    ...(cell.style !== undefined && { s: styleId(sheetId, cell.style) }),
  };
}

/** Text that the grid would take for something else, such as "=1+1" or "007", is held down as text. */
function toGridValue(value: CellValue): Pick<ICellData, "v" | "t"> {
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: /^\p{L}/u.test(value) ? CellValueType.STRING : CellValueType.FORCE_STRING };
}

/** The grid counts frozen rows and says where the moving part starts; -1 stands for nothing frozen. */
function toGridFreeze({ rows, columns }: SheetModel["freeze"]): IFreeze {
  return { xSplit: columns, ySplit: rows, startRow: rows || -1, startColumn: columns || -1 };
}

import { BooleanNumber } from "@univerjs/core";
import type { ISheetDataValidationRule, IWorksheetData } from "@univerjs/core";
import type { IConditionFormattingRule } from "@univerjs/sheets-conditional-formatting";
import { deserializeRangeWithSheet } from "@univerjs/engine-formula";
import type { Cell, SheetModel } from "../../sheets/model";
import { finishEditing, waitForCalculation } from "./calculation";
import { readCells } from "./cells";
import type { GridCell } from "./cells";
import { fromGridConditionalFormat } from "./conditional-formats";
import { NAMESPACE } from "./functions";
import type { Grid } from "./grid";
import { heightToPixels, pixelsToHeight, pixelsToWidth, widthToPixels } from "./lengths";
import { fromGridRange } from "./ranges";
import type { CellKeepsake, SheetKeepsake } from "./sheet-data";
import { StyleNames } from "./style-names";
import { fromGridValidation } from "./validations";

const PLAIN_PRINT: SheetModel["print"] = { orientation: "portrait", fitWidth: false };

/**
 * The whole workbook as sheet models, with everything the coach changed. A formula that uses the add-in's
 * own functions, or spills, becomes its present values: a file opened without the add-in keeps its figures.
 */
export async function takeSnapshot(grid: Grid): Promise<SheetModel[]> {
  await finishEditing(grid);
  await waitForCalculation(grid);
  const saved = grid.book.save();
  const resource = <Data>(name: string): Data =>
    JSON.parse(saved.resources?.find((one) => one.name === name)?.data || "{}") as Data;
  const validations = resource<Record<string, ISheetDataValidationRule[]>>("SHEET_DATA_VALIDATION_PLUGIN");
  const formats = resource<Record<string, IConditionFormattingRule[]>>("SHEET_CONDITIONAL_FORMATTING_PLUGIN");
  return saved.sheetOrder.map((sheetId): SheetModel => {
    const sheet = saved.sheets[sheetId];
    if (!sheet?.name)
      throw new Error(`The grid saved no sheet ${sheetId}. Maybe its saved form has changed.`);
    const styles = new StyleNames(sheetId, saved.styles);
    const cells = readCells(grid, sheetId);
    return {
      name: sheet.name,
      columns: widthsOf(sheet),
      rowHeights: heightsOf(sheet),
      cells: cells.flatMap((cell) => toCell(cell, styles)),
      styles: styles.looks,
      merges: (sheet.mergeData ?? []).map(fromGridRange),
      freeze: freezeOf(sheet),
      names: namesOn(grid, sheet.name),
      validations: (validations[sheetId] ?? []).flatMap(fromGridValidation),
      conditionalFormats: (formats[sheetId] ?? []).flatMap((rule) =>
        fromGridConditionalFormat(rule, (formula, columns, rows) =>
          grid.api.getFormula().moveFormulaRefOffset(formula, columns, rows),
        ),
      ),
      notes: cells.flatMap(({ row, column, data }) => {
        const { note } = (data.custom ?? {}) as CellKeepsake;
        return note === undefined ? [] : [{ row, column, text: note }];
      }),
      print: (sheet.custom as SheetKeepsake | undefined)?.print ?? PLAIN_PRINT,
    };
  });
}

const OWN_FUNCTION = new RegExp(`\\b${NAMESPACE}\\.`, "i");

function toCell(cell: GridCell, styles: StyleNames): Cell[] {
  const { row, column, value, formula, spills } = cell;
  const style = styles.nameOf(cell.data.s);
  const keepsFormula = formula !== undefined && !spills && !OWN_FUNCTION.test(formula);
  const content = keepsFormula ? { formula } : value !== undefined && { value };
  return content || style !== undefined
    ? [{ row, column, ...content, ...(style !== undefined && { style }) }]
    : [];
}

/** The painted width is kept as long as nobody dragged the column: whole pixels would round it. */
function widthsOf({
  columnData = {},
  defaultColumnWidth = 88,
}: Partial<IWorksheetData>): SheetModel["columns"] {
  const last = Math.max(-1, ...Object.keys(columnData).map(Number));
  return Array.from({ length: last + 1 }, (_, column) => {
    const pixels = columnData[column]?.w ?? defaultColumnWidth;
    const painted = columnData[column]?.custom?.width as number | undefined;
    return {
      width: painted !== undefined && widthToPixels(painted) === pixels ? painted : pixelsToWidth(pixels),
    };
  });
}

/** Heights that were given or dragged; those that follow their text are left to the program that opens the file. */
function heightsOf({ rowData = {} }: Partial<IWorksheetData>): SheetModel["rowHeights"] {
  const heights: Record<number, number> = {};
  for (const [row, { h, ia, custom }] of Object.entries(rowData)) {
    if (h === undefined || ia !== BooleanNumber.FALSE) continue;
    const painted = custom?.height as number | undefined;
    heights[Number(row)] =
      painted !== undefined && heightToPixels(painted) === h ? painted : pixelsToHeight(h);
  }
  return heights;
}

function freezeOf({ freeze }: Partial<IWorksheetData>): SheetModel["freeze"] {
  return {
    rows: freeze && freeze.ySplit > 0 ? freeze.startRow : 0,
    columns: freeze && freeze.xSplit > 0 ? freeze.startColumn : 0,
  };
}

function namesOn(grid: Grid, sheetName: string): SheetModel["names"] {
  return grid.book.getDefinedNames().flatMap((defined) => {
    const place = deserializeRangeWithSheet(defined.getFormulaOrRefString());
    return place.sheetName === sheetName
      ? [{ name: defined.getName(), range: fromGridRange(place.range) }]
      : [];
  });
}

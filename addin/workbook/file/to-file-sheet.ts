import type { WriteSheet } from "hucre";
import type { SheetModel } from "../../sheets/model";
import { toFileCells } from "./cells";
import { toConditionalRule } from "./conditional-formats";
import { toFooter, toPageSetup } from "./print-setup";
import { toDataValidation } from "./validations";

/** A sheet as the .xlsx writer takes it. Names of ranges and what hangs on them are the workbook's. */
export function toFileSheet(model: SheetModel): WriteSheet {
  const { rows, columns } = model.freeze;
  return {
    name: model.name,
    columns: model.columns.map(({ width }) => ({ width: toFileWidth(width) })),
    rowDefs: new Map(Object.entries(model.rowHeights).map(([row, height]) => [Number(row), { height }])),
    cells: toFileCells(model),
    merges: model.merges.map((range) => ({
      startRow: range.row,
      startCol: range.column,
      endRow: range.row + range.rows - 1,
      endCol: range.column + range.columns - 1,
    })),
    ...((rows > 0 || columns > 0) && { freezePane: { rows, columns } }),
    dataValidations: model.validations.map(toDataValidation),
    conditionalRules: model.conditionalFormats.map(toConditionalRule),
    pageSetup: toPageSetup(model.print),
    ...toFooter(model.print),
  };
}

/** Pixels of a digit in the default font, and of the blank edges of a cell. */
const DIGIT_PIXELS = 7;
const EDGE_PIXELS = 5;

/**
 * A width in characters as files keep it, with the cell's edges, in steps of 1/256.
 * Source: ECMA-376 part 1, 18.3.1.13 (col).
 */
export function toFileWidth(characters: number): number {
  return Math.trunc(((characters * DIGIT_PIXELS + EDGE_PIXELS) / DIGIT_PIXELS) * 256) / 256;
}

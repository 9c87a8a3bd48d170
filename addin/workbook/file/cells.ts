import type { Cell as FileCell, CellStyle } from "hucre";
import { cellRef } from "../../sheets/cell-ref";
import type { Cell, CellValue, SheetModel } from "../../sheets/model";
import { toCellStyle } from "./cell-style";
import { toFileFormula } from "./file-formula";
import { toFileText } from "./file-text";

/** The most a cell holds, in UTF-16 units. */
const LONGEST_TEXT = 32_767;
/** The writer would make a cell in error of these, though they are text here. */
const ERROR_WORD = /^#[A-Z0-9/_]+[!?]?$/;

/** Cells and notes by "row,column". One style object a name, so that the file keeps each style once. */
export function toFileCells(model: SheetModel): Map<string, Partial<FileCell>> {
  const styles = new Map<string, CellStyle>();
  for (const [name, look] of Object.entries(model.styles)) styles.set(name, toCellStyle(look));
  const cells = new Map<string, Partial<FileCell>>();
  for (const cell of model.cells) {
    const key = `${cell.row},${cell.column}`;
    const place = `${cellRef(cell.row, cell.column)} of "${model.name}"`;
    if (cells.has(key)) throw new Error(`Two cells stand at ${place}. Maybe two parts of the sheet overlap.`);
    cells.set(key, { ...contentOf(cell, place), ...styleOf(cell, styles, place) });
  }
  for (const { row, column, text } of model.notes) {
    const key = `${row},${column}`;
    cells.set(key, { ...cells.get(key), comment: { text: toFileText(text) } });
  }
  return cells;
}

function contentOf({ value, formula }: Cell, place: string): Partial<FileCell> {
  if (formula !== undefined && value !== undefined) {
    throw new Error(`${place} has both a value and a formula. Maybe one of them was meant for a neighbour.`);
  }
  if (value !== undefined) return valueOf(value, place);
  if (formula === undefined) return {};
  const { text, isArray } = toFileFormula(formula, place);
  if (!isArray) return { formula: text };
  return { formula: text, formulaType: "array", formulaRef: place.split(" ")[0], formulaDynamic: true };
}

function valueOf(value: CellValue, place: string): Partial<FileCell> {
  if (typeof value === "number" && !Number.isFinite(value)) {
    throw new Error(`The number at ${place} is ${value}. Maybe a division by nothing led to it.`);
  }
  if (typeof value !== "string") return { value };
  if (value.length > LONGEST_TEXT) {
    throw new Error(
      `The text at ${place} has ${value.length} characters and a cell holds ${LONGEST_TEXT}. Maybe it was meant for several cells.`,
    );
  }
  const text = toFileText(value);
  return ERROR_WORD.test(text) ? { richText: [{ text }] } : { value: text };
}

function styleOf({ style }: Cell, styles: Map<string, CellStyle>, place: string): Partial<FileCell> {
  if (style === undefined) return {};
  const known = styles.get(style);
  if (!known)
    throw new Error(`${place} has the style "${style}", which the sheet lacks. Maybe it is misspelt.`);
  return { style: known };
}

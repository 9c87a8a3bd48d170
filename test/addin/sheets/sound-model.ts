/** What must hold of any sheet model, whatever is on it. */
import { cellRef } from "../../../addin/sheets/cell-ref";
import type { CellRange, SheetModel } from "../../../addin/sheets/model";

function keysOf({ row, column, rows, columns }: CellRange): string[] {
  return Array.from({ length: rows * columns }, (_, index) =>
    cellRef(row + Math.floor(index / columns), column + (index % columns)),
  );
}

const isInside = ({ row, column, rows, columns }: CellRange, width: number): boolean =>
  row >= 0 && column >= 0 && rows >= 1 && columns >= 1 && column + columns <= width;

/** Everything that is wrong with a model, in words; empty for a sound one. */
export function faultsOf(model: SheetModel): string[] {
  const faults: string[] = [];
  const seen = new Set<string>();
  const width = model.columns.length;
  for (const cell of model.cells) {
    const at = cellRef(cell.row, cell.column);
    if (seen.has(at)) faults.push(`${at} twice`);
    seen.add(at);
    if (cell.column >= width) faults.push(`${at} beyond the last column`);
    if (cell.value !== undefined && cell.formula !== undefined) faults.push(`${at} with value and formula`);
    if (cell.formula !== undefined && !cell.formula.startsWith("="))
      faults.push(`${at} with a formula without "="`);
    if (cell.formula !== undefined && cell.formula.length > 8192)
      faults.push(`${at} with too long a formula`);
    if (cell.style !== undefined && !Object.hasOwn(model.styles, cell.style))
      faults.push(`${at}: no style ${cell.style}`);
    if (typeof cell.value === "number" && !Number.isFinite(cell.value)) faults.push(`${at} holds no number`);
    if (typeof cell.value === "string" && cell.value.length > 32767)
      faults.push(`${at} holds too long a text`);
  }
  const merged = new Set<string>();
  for (const merge of model.merges) {
    if (!isInside(merge, width)) faults.push(`merge ${JSON.stringify(merge)} outside`);
    keysOf(merge).forEach((at, index) => {
      if (merged.has(at)) faults.push(`${at} merged twice`);
      merged.add(at);
      const hidden = index > 0 && model.cells.find((cell) => cellRef(cell.row, cell.column) === at);
      if (hidden && (hidden.value !== undefined || hidden.formula !== undefined))
        faults.push(`${at} hidden by a merge`);
    });
  }
  const ranges = [...model.validations, ...model.conditionalFormats, ...model.names].map(
    ({ range }) => range,
  );
  if (model.print.area) ranges.push(model.print.area);
  for (const range of ranges)
    if (!isInside(range, width)) faults.push(`range ${JSON.stringify(range)} outside`);
  const { area } = model.print;
  for (const { row, column } of model.cells) {
    if (area && (row >= area.row + area.rows || column >= area.column + area.columns)) {
      faults.push(`${cellRef(row, column)} is not printed`);
    }
  }
  if (model.name.length > 31 || /[:\\/?*[\]]/.test(model.name)) faults.push(`name ${model.name}`);
  for (const list of model.validations) {
    if (list.message.length > 255) faults.push(`a message of ${list.message.length} characters`);
    if (list.kind === "list" && list.values.join(",").length > 255) faults.push("a list too long for a file");
    if (list.kind === "list" && list.values.some((value) => value.includes(",")))
      faults.push("a list with a comma");
  }
  for (const height of Object.values(model.rowHeights))
    if (height > 409) faults.push(`a row ${height} points high`);
  return faults;
}

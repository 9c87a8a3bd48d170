import type { SheetModel } from "../../sheets/model";
import type { CellContent, Workbook } from "../port";
import { finishEditing, waitForCalculation } from "./calculation";
import { readCells } from "./cells";
import type { Grid } from "./grid";
import { paintSheets } from "./paint";

/** The workbook of the bench page: what Excel is to the add-in, the in-browser grid is here. */
export class BenchWorkbook implements Workbook {
  constructor(private readonly grid: Grid) {}

  async sheetNames(): Promise<readonly string[]> {
    return this.grid.book.getSheets().map((sheet) => sheet.getSheetName());
  }

  async addSheets(models: readonly SheetModel[]): Promise<void> {
    await finishEditing(this.grid);
    const sheetNames = await this.sheetNames();
    const rangeNames = this.grid.book.getDefinedNames().map((name) => name.getName());
    refuseTaken(
      "sheet",
      sheetNames,
      models.map((model) => model.name),
    );
    refuseTaken(
      "range",
      rangeNames,
      models.flatMap((model) => model.names.map(({ name }) => name)),
    );
    paintSheets(this.grid, models);
  }

  async activate(sheetName: string): Promise<void> {
    await finishEditing(this.grid);
    this.grid.book.setActiveSheet(this.find(sheetName));
  }

  async readValues(sheetName: string): Promise<readonly (readonly CellContent[])[]> {
    const sheetId = this.find(sheetName).getSheetId();
    await finishEditing(this.grid);
    await waitForCalculation(this.grid);
    const filled = readCells(this.grid, sheetId).filter(({ value }) => value !== undefined);
    if (filled.length === 0) return [];
    const [top, bottom] = bounds(filled.map(({ row }) => row));
    const [left, right] = bounds(filled.map(({ column }) => column));
    const rows = Array.from({ length: bottom - top + 1 }, () =>
      Array<CellContent>(right - left + 1).fill(""),
    );
    for (const { row, column, value } of filled) rows[row - top]![column - left] = value!;
    return rows;
  }

  private find(sheetName: string) {
    const sheet = this.grid.book.getSheetByName(sheetName);
    if (!sheet) throw new Error(`The workbook has no sheet "${sheetName}".`);
    return sheet;
  }
}

/** Spreadsheet programs do not tell capitals from small letters in names. */
function refuseTaken(kind: string, present: readonly string[], wanted: readonly string[]): void {
  const taken = new Set(present.map((name) => name.toLowerCase()));
  for (const name of wanted) {
    const key = name.toLowerCase();
    if (taken.has(key)) throw new Error(`The ${kind} name "${name}" is taken; nothing was written.`);
    taken.add(key);
  }
}

function bounds(numbers: readonly number[]): [least: number, most: number] {
  return numbers.reduce(([least, most], number) => [Math.min(least, number), Math.max(most, number)], [
    Infinity,
    -Infinity,
  ] as [number, number]);
}

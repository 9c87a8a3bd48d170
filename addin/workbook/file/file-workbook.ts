import type { SheetModel } from "../../sheets/model";
import type { CellContent, Workbook } from "../port";
import { checkNames, sameName } from "./check-names";
import { toFileSheet } from "./to-file-sheet";
import { toXlsx, type FileProperties } from "./to-xlsx";

/** A workbook that is an .xlsx file in the making. */
export class FileWorkbook implements Workbook {
  private models: readonly SheetModel[] = [];
  private active: SheetModel | undefined;

  async sheetNames(): Promise<readonly string[]> {
    return this.models.map(({ name }) => name);
  }

  async addSheets(models: readonly SheetModel[]): Promise<void> {
    const together = [...this.models, ...models];
    checkNames(together);
    models.forEach(toFileSheet); // throws on whatever a file cannot hold, before anything is kept
    this.models = together;
  }

  async activate(sheetName: string): Promise<void> {
    this.active = this.find(sheetName);
  }

  /**
   * Nothing is calculated here.
   * @throws when the sheet holds a formula: its value is known to the program that opens the file, not before
   */
  async readValues(sheetName: string): Promise<readonly (readonly CellContent[])[]> {
    const filled = this.find(sheetName).cells.filter(
      ({ value, formula }) => formula !== undefined || (value !== undefined && value !== ""),
    );
    const formula = filled.find((cell) => cell.formula !== undefined);
    if (formula) {
      throw new Error(
        `The sheet "${sheetName}" holds the formula ${formula.formula}, which a file does not calculate. ` +
          "Maybe the values were meant to be read from the workbook they are edited in.",
      );
    }
    if (filled.length === 0) return [];
    const top = filled.reduce((least, { row }) => Math.min(least, row), Infinity);
    const left = filled.reduce((least, { column }) => Math.min(least, column), Infinity);
    const bottom = filled.reduce((most, { row }) => Math.max(most, row), 0);
    const right = filled.reduce((most, { column }) => Math.max(most, column), 0);
    const blankRow = () => Array<CellContent>(right - left + 1).fill("");
    const rows = Array.from({ length: bottom - top + 1 }, blankRow);
    for (const { row, column, value } of filled) rows[row - top]![column - left] = value!;
    return rows;
  }

  /** The file's bytes, which open on the sheet that was activated last. */
  async toXlsx(properties: Omit<FileProperties, "activeSheet">): Promise<Uint8Array> {
    return toXlsx(this.models, { ...properties, ...(this.active && { activeSheet: this.active.name }) });
  }

  private find(sheetName: string): SheetModel {
    const model = this.models.find(({ name }) => sameName(name, sheetName));
    if (!model) throw new Error(`The workbook has no sheet "${sheetName}".`);
    return model;
  }
}

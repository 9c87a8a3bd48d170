/** The few things the add-in asks of a workbook. One folder per kind of workbook beside this file. */
import type { CellValue, SheetModel } from "../sheets/model";

/** What a cell holds: its value, "" when blank. */
export type CellContent = CellValue;

export interface Workbook {
  sheetNames(): Promise<readonly string[]>;
  /** Adds new sheets, all or none. Throws when a name is taken: nothing is ever overwritten. */
  addSheets(models: readonly SheetModel[]): Promise<void>;
  activate(sheetName: string): Promise<void>;
  /** The values of a sheet's used range from its first cell on, row by row; empty when there is nothing. */
  readValues(sheetName: string): Promise<readonly (readonly CellContent[])[]>;
}

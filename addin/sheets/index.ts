/** The worksheets as data, ready to be painted by any workbook. */
import type { Planned } from "../../engine";
import type { SheetModel } from "./model";
import { reasonsSheet } from "./reasons";
import { freeSheetNames } from "./sheet-name";
import { weekGridSheet } from "./week-grid";

export { PHASE_COLOURS, KIND_COLOURS } from "./colours";
export { demoRosterSheet } from "./demo-roster";
export type { SheetModel } from "./model";
export { overviewSheet, type OverviewRow } from "./overview";

/**
 * A lifter's plan as two sheets: the week grid and the reasons behind it.
 * @param takenNames sheet names in use, which are passed over
 */
export function planSheets(answer: Planned, takenNames: readonly string[]): SheetModel[] {
  const [plan, reasons] = freeSheetNames(["Plan", "Reasons"], answer.request.lifter, takenNames);
  return [weekGridSheet(answer, plan!), reasonsSheet(answer, reasons!)];
}

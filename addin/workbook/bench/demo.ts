import { IUndoRedoService } from "@univerjs/core";
import { demoRosterSheet } from "../../sheets/demo-roster";
import type { Workbook } from "../port";
import type { Grid } from "./grid";

/** Replaces the blank sheet of a new grid by the roster of invented lifters; this cannot be undone by hand. */
export async function openDemo(grid: Grid, workbook: Workbook): Promise<void> {
  const blank = grid.book.getActiveSheet().getSheetId();
  const roster = demoRosterSheet();
  await workbook.addSheets([roster]);
  await workbook.activate(roster.name);
  grid.book.deleteSheet(blank);
  grid.univer.__getInjector().get(IUndoRedoService).clearUndoRedo(grid.book.getId());
}

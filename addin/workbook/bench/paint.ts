import { ICommandService, IUndoRedoService, mergeWorksheetSnapshotWithDefault } from "@univerjs/core";
import type { IMutationInfo } from "@univerjs/core";
import { AddDataValidationMutation, RemoveDataValidationMutation } from "@univerjs/data-validation";
import { RemoveDefinedNameMutation, SetDefinedNameMutation } from "@univerjs/engine-formula";
import { InsertSheetMutation, RemoveSheetMutation, SheetInterceptorService } from "@univerjs/sheets";
import {
  AddConditionalRuleMutation,
  DeleteConditionalRuleMutation,
} from "@univerjs/sheets-conditional-formatting";
import type { SheetModel } from "../../sheets/model";
import { toGridConditionalFormat } from "./conditional-formats";
import type { Grid } from "./grid";
import { toGridRange, toReference } from "./ranges";
import { toGridSheet, toGridStyles } from "./sheet-data";
import { toGridValidation } from "./validations";

/** One change to the grid and what takes it back. */
interface Step {
  readonly redo: IMutationInfo;
  readonly undo: IMutationInfo;
}

/**
 * Paints new sheets, all or none; one step back takes them all away. The names in the models must be free.
 * @throws a fault of ours, such as an unknown style; the grid is then as it was before
 */
export function paintSheets(grid: Grid, models: readonly SheetModel[]): void {
  const injector = grid.univer.__getInjector();
  const commands = injector.get(ICommandService);
  const sheets = models.map((model) => ({ model, sheetId: crypto.randomUUID() }));
  const steps = sheets.flatMap(({ model, sheetId }, index) => {
    grid.book.addStyles(toGridStyles(model, sheetId));
    return stepsOf(grid, model, sheetId, grid.book.getNumSheets() + index);
  });
  const undos: IMutationInfo[] = [];
  try {
    for (const { redo, undo } of steps) {
      if (!commands.syncExecuteCommand(redo.id, redo.params)) {
        throw new Error(`The grid refused ${redo.id}. Maybe a cell is being edited.`);
      }
      undos.unshift(undo);
    }
  } catch (fault) {
    for (const { id, params } of undos) commands.syncExecuteCommand(id, params);
    throw fault;
  }
  injector.get(IUndoRedoService).pushUndoRedo({
    unitID: grid.book.getId(),
    undoMutations: undos,
    redoMutations: steps.map(({ redo }) => redo),
  });
  for (const { model, sheetId } of sheets) fitWrappedRows(grid, model, sheetId);
}

function stepsOf(grid: Grid, model: SheetModel, sheetId: string, index: number): Step[] {
  const unitId = grid.book.getId();
  const place = { unitId, subUnitId: sheetId };
  const sheet = mergeWorksheetSnapshotWithDefault(toGridSheet(model, sheetId));
  return [
    {
      redo: { id: InsertSheetMutation.id, params: { unitId, index, sheet } },
      undo: { id: RemoveSheetMutation.id, params: { ...place, subUnitName: model.name } },
    },
    ...model.names.map(({ name, range }) => {
      const reference = toReference(model.name, range);
      const params = grid.book.newDefinedNameBuilder().setName(name).setRef(reference).build();
      return {
        redo: { id: SetDefinedNameMutation.id, params },
        undo: { id: RemoveDefinedNameMutation.id, params },
      };
    }),
    // The grid puts each new rule in front of the others, and the model's earlier ones win.
    ...[...model.conditionalFormats].reverse().map((format) => {
      const cfId = crypto.randomUUID();
      return {
        redo: {
          id: AddConditionalRuleMutation.id,
          params: { ...place, rule: toGridConditionalFormat(format, cfId) },
        },
        undo: { id: DeleteConditionalRuleMutation.id, params: { ...place, cfId } },
      };
    }),
    ...model.validations.map((validation) => {
      const ruleId = crypto.randomUUID();
      return {
        redo: {
          id: AddDataValidationMutation.id,
          params: { ...place, rule: toGridValidation(validation, ruleId) },
        },
        undo: { id: RemoveDataValidationMutation.id, params: { ...place, ruleId } },
      };
    }),
  ];
}

/** Rows without a height of their own grow with their wrapped text, as in a spreadsheet program. */
function fitWrappedRows(grid: Grid, model: SheetModel, sheetId: string): void {
  const rows = new Set<number>();
  for (const cell of model.cells) {
    const wraps = cell.style !== undefined && model.styles[cell.style]?.wrap;
    if (wraps && model.rowHeights[cell.row] === undefined) rows.add(cell.row);
  }
  const columns = Math.max(1, model.columns.length);
  const ranges = [...rows].map((row) => toGridRange({ row, column: 0, rows: 1, columns }));
  if (ranges.length === 0) return;
  const injector = grid.univer.__getInjector();
  const { redos } = injector.get(SheetInterceptorService).generateMutationsOfAutoHeight({
    unitId: grid.book.getId(),
    subUnitId: sheetId,
    ranges,
    autoHeightRanges: ranges,
  });
  for (const { id, params } of redos) injector.get(ICommandService).syncExecuteCommand(id, params);
}

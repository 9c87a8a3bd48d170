import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import type { Grid } from "./grid";
import type { CellKeepsake } from "./sheet-data";

const HINT = "Edit the roster or fill in the pane; every figure follows.";
const NOTE_CORNER = { tr: { color: "#B4460A", size: 7 } };

/**
 * The open grid has no notes, so a coloured corner marks a cell that carries one, and the status line says
 * the note of the cell that is selected.
 */
export function showHints(grid: Grid, status: HTMLElement): void {
  status.textContent = HINT;
  grid.univer
    .__getInjector()
    .get(SheetInterceptorService)
    .intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
      priority: 10,
      handler: (cell, place, next) => {
        const { note } = (place.rawData?.custom ?? {}) as CellKeepsake;
        if (note === undefined || !cell) return next(cell);
        return next({ ...cell, markers: { ...cell.markers, ...NOTE_CORNER } });
      },
    });
  grid.book.onSelectionChange(([selection]) => {
    if (!selection) return;
    const cell = grid.book.getActiveSheet().getRange(selection.startRow, selection.startColumn);
    const { note } = (cell.getCellData()?.custom ?? {}) as CellKeepsake;
    status.textContent = note === undefined ? HINT : `Note on ${cell.getA1Notation()}: ${note}`;
  });
}

import type { Grid } from "./grid";

const LONGEST_CALCULATION_MS = 60_000;

/** Waits until every formula shows its result; returns half a second later when nothing is being calculated. */
export async function waitForCalculation(grid: Grid): Promise<void> {
  await grid.api.getFormula().onCalculationResultApplied(LONGEST_CALCULATION_MS);
}

/** Takes what is being typed into its cell first: the grid refuses other work as long as a cell is open. */
export async function finishEditing(grid: Grid): Promise<void> {
  await grid.book.endEditingAsync(true);
}

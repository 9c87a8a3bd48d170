import type { BenchWorkbook } from "./bench-workbook";
import type { WorksheetFunction } from "./functions";
import type { takeSnapshot } from "./snapshot";

/** What the page shows to its tests, which drive it from outside as `window.meetwardBench`. */
export interface BenchWindow {
  readonly workbook: BenchWorkbook;
  readonly snapshot: () => ReturnType<typeof takeSnapshot>;
  /** Makes further functions available to the grid as MEETWARD.NAME. */
  readonly registerFunctions: (functions: Readonly<Record<string, WorksheetFunction>>) => void;
  /** Writes into one cell, such as "B2", of a sheet: "=…" is a formula. */
  readonly type: (sheetName: string, cell: string, content: string | number) => void;
}

declare global {
  interface Window {
    meetwardBench: BenchWindow;
  }
}

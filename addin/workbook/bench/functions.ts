import type { FUniver } from "@univerjs/core/facade";

// Each function declares its own parameters; the grid hands over whatever the coach wrote.
// eslint-disable-next-line @typescript-eslint/no-explicit-any
export type WorksheetFunction = (...args: any[]) => unknown[][];

export const NAMESPACE = "MEETWARD";

/** Makes each function available to the grid's formulas as MEETWARD.NAME. Register before writing formulas. */
export function registerFunctions(
  api: FUniver,
  functions: Readonly<Record<string, WorksheetFunction>>,
): void {
  const formulas = api.getFormula();
  for (const [name, calculate] of Object.entries(functions)) {
    formulas.registerFunction(
      `${NAMESPACE}.${name}`,
      (...args: unknown[]) => answer(calculate, args) as never,
    );
  }
}

/** A fault that left a function would end all calculation on the page: it becomes a message in its cell. */
function answer(calculate: WorksheetFunction, args: readonly unknown[]): unknown[][] {
  try {
    const rows = calculate(...args.map(toArgument));
    return rows.map((row) => row.map((value) => value ?? ""));
  } catch (fault) {
    return [[`#VALUE! ${fault instanceof Error ? fault.message : String(fault)}`]];
  }
}

/** The grid hands over 0 for an omitted argument and [[v]] for a single cell; Excel says null and v. */
function toArgument(given: unknown): unknown {
  return given === 0 || given === undefined ? null : given;
}

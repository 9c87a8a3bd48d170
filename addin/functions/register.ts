/** The worksheet functions by name, for hosts that register them themselves. */
import { check, hardWeeks, level, phaseOn, phaseWeeks, prepWeeks, weekGrid } from "./functions";

// Each function declares its own parameters; a host hands over whatever the coach wrote.
// eslint-disable-next-line @typescript-eslint/no-explicit-any
export type WorksheetFunction = (...args: any[]) => unknown[][];

/** Names without the namespace MEETWARD. None of them throws. */
export const WORKSHEET_FUNCTIONS: Readonly<Record<string, WorksheetFunction>> = {
  LEVEL: guard(level),
  HARDWEEKS: guard(hardWeeks),
  PREPWEEKS: guard(prepWeeks),
  PHASEWEEKS: guard(phaseWeeks),
  PHASEON: guard(phaseOn),
  WEEKGRID: guard(weekGrid),
  CHECK: guard(check),
};

/** A fault of ours becomes a message in one cell: a throw would end all calculation in some hosts. */
export function guard(calculate: WorksheetFunction): WorksheetFunction {
  return (...args) => {
    try {
      return calculate(...args);
    } catch (fault) {
      const said = fault instanceof Error ? fault.message : String(fault);
      return [[`A fault of the add-in, not of your data; please report it: ${said}`]];
    }
  };
}

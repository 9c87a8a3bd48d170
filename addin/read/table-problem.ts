/** What can be wrong with a table before the engine sees a row, and the words for it. */
import type { RequestField } from "../../engine/index";
import { FIELD_NAMES, givenText } from "../sheets/words";

export type TableProblem =
  /** The column is left out. `meant` is the field whose heading it nearly is. */
  | { readonly kind: "unknownHeading"; readonly given: string; readonly meant: RequestField | null }
  | { readonly kind: "noKnownHeading"; readonly given: string }
  | { readonly kind: "duplicateHeading"; readonly field: RequestField; readonly headings: readonly string[] }
  | { readonly kind: "mixedUnits"; readonly kg: readonly string[]; readonly lb: readonly string[] }
  /** The row's unit cell contradicts the headings. */
  | { readonly kind: "unitClash"; readonly given: string; readonly headings: readonly string[] }
  /** In a worksheet, where a blank cell may read as 0. */
  | { readonly kind: "zeroYears" }
  /** Cells to the right of the last standard column, in a table without headings. */
  | { readonly kind: "surplusCells"; readonly given: unknown };

/** Whether it stops the rows it concerns from being planned. */
export function isRefused({ kind }: TableProblem): boolean {
  return kind !== "unknownHeading" && kind !== "surplusCells" && kind !== "zeroYears";
}

/** A table problem in the terms every problem is told in. */
export interface ToldProblem {
  /** The request key it is about, or "headings" or "row". */
  readonly field: string;
  readonly given: unknown;
  readonly allowed: string;
  /** A whole sentence that names the field, what was given and what is allowed. */
  readonly message: string;
}

const KNOWN_HEADINGS = Object.values(FIELD_NAMES).join(", ");
const quoted = (headings: readonly string[]): string => headings.map(givenText).join(" and ");

export function tellTableProblem(problem: TableProblem): ToldProblem {
  const told = (field: string, given: unknown, allowed: string, message: string): ToldProblem => ({
    field,
    given,
    allowed,
    message,
  });
  switch (problem.kind) {
    case "unknownHeading": {
      const { given, meant } = problem;
      const known = meant === null ? `known: ${KNOWN_HEADINGS}` : `meant: ${FIELD_NAMES[meant]}?`;
      const message = `Heading ${givenText(given)}: not known here, so its column is left out; ${known}.`;
      return told("headings", given, KNOWN_HEADINGS, message);
    }
    case "noKnownHeading": {
      const { given } = problem;
      const message = `Headings: given ${givenText(given)}, none of them known; allowed: ${KNOWN_HEADINGS}.`;
      return told("headings", given, KNOWN_HEADINGS, message);
    }
    case "duplicateHeading": {
      const name = FIELD_NAMES[problem.field];
      const allowed = `one column for ${name}`;
      const message = `${name}: given the headings ${quoted(problem.headings)}; allowed: ${allowed}.`;
      return told(problem.field, problem.headings, allowed, message);
    }
    case "mixedUnits": {
      const { kg, lb } = problem;
      const allowed = "one unit, kg or lb, in all headings";
      const message = `Unit: given ${quoted(kg)} in kg beside ${quoted(lb)} in lb; allowed: ${allowed}.`;
      return told("unit", [...kg, ...lb], allowed, message);
    }
    case "unitClash": {
      const { given, headings } = problem;
      const allowed = "the unit that the headings say, or blank";
      const message = `Unit: given ${givenText(given)} under the headings ${quoted(headings)}; allowed: ${allowed}.`;
      return told("unit", given, allowed, message);
    }
    case "zeroYears": {
      const name = FIELD_NAMES.trainingYears;
      const allowed = "the years this lifter has trained, such as 0.5";
      const message = `${name}: given 0 or blank, taken as brand new; allowed: ${allowed}.`;
      return told("trainingYears", 0, allowed, message);
    }
    case "surplusCells": {
      const allowed = `columns in the order ${KNOWN_HEADINGS}`;
      const message = `Cells beyond the last column: given ${givenText(problem.given)}, left out; allowed: ${allowed}.`;
      return told("row", problem.given, allowed, message);
    }
  }
}

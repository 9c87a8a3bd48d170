/** Which column holds which field, and the unit the headings say. */
import { REQUEST_FIELDS, type RequestField, type Unit } from "../../engine/index";
import { readHeading } from "./headings";
import type { TableProblem } from "./table-problem";

export interface Columns {
  readonly known: readonly { readonly field: RequestField; readonly index: number }[];
  /** No headings: columns in their standard order. */
  readonly isStandard: boolean;
  /** The unit that headings say; null where none does. */
  readonly unit: Unit | null;
  /** The headings that say so. */
  readonly unitHeadings: readonly string[];
  readonly problems: readonly TableProblem[];
}

const STANDARD: Columns = {
  known: REQUEST_FIELDS.map((field, index) => ({ field, index })),
  isStandard: true,
  unit: null,
  unitHeadings: [],
  problems: [],
};

/** @param headings one cell a column; null for the standard order. */
export function readColumns(headings: readonly unknown[] | null): Columns {
  if (headings === null) return STANDARD;
  const known: { field: RequestField; index: number }[] = [];
  const wordsOf = new Map<RequestField, string[]>();
  const said: Record<Unit, string[]> = { kg: [], lb: [] };
  const problems: TableProblem[] = [];
  headings.forEach((cell, index) => {
    const heading = readHeading(cell);
    if (heading.kind === "unknown") {
      problems.push({ kind: "unknownHeading", given: heading.text, meant: heading.meant });
    }
    if (heading.kind !== "known") return;
    const { field, text, unit } = heading;
    if (unit !== null) said[unit].push(text);
    if (!wordsOf.has(field)) known.push({ field, index });
    wordsOf.set(field, [...(wordsOf.get(field) ?? []), text]);
  });
  for (const [field, words] of wordsOf) {
    if (words.length > 1) problems.push({ kind: "duplicateHeading", field, headings: words });
  }
  if (known.length === 0) problems.push({ kind: "noKnownHeading", given: headings.map(String).join(", ") });
  const isMixed = said.kg.length > 0 && said.lb.length > 0;
  if (isMixed) problems.push({ kind: "mixedUnits", kg: said.kg, lb: said.lb });
  const unit = isMixed ? null : said.kg.length > 0 ? "kg" : said.lb.length > 0 ? "lb" : null;
  return { known, isStandard: false, unit, unitHeadings: unit === null ? [] : said[unit], problems };
}

/**
 * Arguments as hosts hand them over: a range as rows of cells, an omitted one as null, a single cell as its value
 * or as a range of one.
 */
import { LIFTS, type Lift } from "../../engine/index";
import { plainContent } from "../read/cell-value";
import { allowedText, givenText } from "../sheets/words";

/** A range as rows of cells; no rows when it is omitted. */
export function toRows(range: unknown): readonly (readonly unknown[])[] {
  if (range === null || range === undefined) return [];
  if (!Array.isArray(range)) return [[range]];
  return range.every(Array.isArray) ? (range as unknown[][]) : [range];
}

/** The one value of an argument that takes a single cell. */
export function toSingle(argument: unknown): string | number | boolean | null {
  return plainContent(Array.isArray(argument) ? toRows(argument)[0]?.[0] : argument);
}

/** The lift an argument names, squat when omitted; or the message for another word. */
export function readLift(argument: unknown): { readonly lift: Lift } | { readonly message: string } {
  const given = toSingle(argument);
  if (given === null) return { lift: "squat" };
  const word = String(given).toLowerCase();
  const lift = LIFTS.find((each) => each === word);
  if (lift !== undefined) return { lift };
  return {
    message: `Lift: given ${givenText(given)}; allowed: ${allowedText({ kind: "oneOf", values: LIFTS })}.`,
  };
}

/** A worksheet cell as a value for the engine. What a cell means depends on its column. */
import type { RequestField } from "../../engine/index";
import { isPlainDecimal } from "./form";
import { readDay } from "./serial-date";

export const NUMBER_FIELDS: ReadonlySet<RequestField> = new Set<RequestField>([
  "bodyweightKg",
  "classLimitKg",
  "trainingYears",
  "squatKg",
  "benchKg",
  "deadliftKg",
  "hardWeeks",
  "prepWeeks",
]);
const DAY_FIELDS: ReadonlySet<RequestField> = new Set<RequestField>(["startDate", "meetDate"]);

/** Blank: nothing, or text of nothing but spaces, no-break spaces among them. */
export function isBlankCell(cell: unknown): boolean {
  return cell === null || cell === undefined || (typeof cell === "string" && cell.trim() === "");
}

/**
 * Reads a cell of a field's column. Blank is null; numeric text is a number in a number column; serial numbers
 * and date-times are ISO days in a date column; a worksheet's error values become their text. Whatever does not
 * fit its column stays as it is, so that the engine can name it.
 */
export function readCell(field: RequestField, cell: unknown): unknown {
  const content = plainContent(cell);
  if (content === null) return null;
  if (NUMBER_FIELDS.has(field)) return toNumber(content);
  if (DAY_FIELDS.has(field)) return readDay(toNumber(content));
  if (field === "explosive") return toBoolean(content);
  return content;
}

/** A cell's content without spaces around it: text, number, boolean, or null when blank. */
export function plainContent(cell: unknown): string | number | boolean | null {
  if (isBlankCell(cell)) return null;
  if (typeof cell === "string") return cell.trim();
  if (typeof cell === "number" || typeof cell === "boolean") return cell;
  return errorText(cell);
}

function toNumber(content: string | number | boolean): string | number | boolean {
  return typeof content === "string" && isPlainDecimal(content) ? Number(content) : content;
}

/** A text file says TRUE where a worksheet holds the truth value. */
function toBoolean(content: string | number | boolean): string | number | boolean {
  if (typeof content !== "string") return content;
  const word = content.toLowerCase();
  return word === "true" ? true : word === "false" ? false : content;
}

/** Hosts hand error values over as objects that carry the text the cell shows. */
function errorText(cell: unknown): string {
  const carried = cell as {
    readonly basicValue?: unknown;
    readonly code?: unknown;
    readonly message?: unknown;
  };
  const shown = [carried.basicValue, carried.code, carried.message].find((text) => typeof text === "string");
  return typeof shown === "string" && shown !== "" ? shown : "an error value";
}

/**
 * A roster's headings in words. Case, spaces, punctuation and a trailing kg or lb do not matter: "Squat",
 * "squat (kg)" and "squatKg" all head the same column.
 */
import { REQUEST_FIELDS, type RequestField, type Unit } from "../../engine/index";
import { ROSTER_HEADINGS } from "../sheets/words";
import { plainContent } from "./cell-value";
import { isNearMiss } from "./near-miss";

/** The standard heading of every column. */
export const HEADINGS: Readonly<Record<RequestField, string>> = ROSTER_HEADINGS;

const OTHER_WORDS: Readonly<Partial<Record<RequestField, readonly string[]>>> = {
  lifter: ["Name", "Athlete", "Lifter name"],
  bodyweightKg: ["Body weight"],
  classLimitKg: ["Class", "Weight class"],
  trainingYears: ["Years", "Years of training"],
  squatKg: ["Best squat"],
  benchKg: ["Best bench", "Bench press"],
  deadliftKg: ["Best deadlift", "Dead lift"],
  startDate: ["Start", "Start day"],
  meetDate: ["Meet", "Meet day"],
  prepWeeks: ["Prep weeks", "Preparation weeks"],
  weekStart: ["Week start"],
  arrangement: ["Arrangement"],
};

const MASS_FIELDS: ReadonlySet<RequestField> = new Set<RequestField>([
  "bodyweightKg",
  "classLimitKg",
  "squatKg",
  "benchKg",
  "deadliftKg",
]);

const KG_ENDING = /(?:kgs?|kilos?|kilograms?)$/;
const LB_ENDING = /(?:lbs?|pounds?)$/;

const plain = (words: string): string => words.toLowerCase().replace(/[^\p{L}\p{N}]/gu, "");
const withoutUnit = (words: string): string => words.replace(KG_ENDING, "").replace(LB_ENDING, "");

const FIELD_OF: ReadonlyMap<string, RequestField> = new Map(
  REQUEST_FIELDS.flatMap((field) =>
    [field, HEADINGS[field], ...(OTHER_WORDS[field] ?? [])].map((words) => {
      const key = plain(words);
      return [MASS_FIELDS.has(field) ? withoutUnit(key) : key, field] as const;
    }),
  ),
);

export type HeadingRead =
  | {
      readonly kind: "known";
      readonly text: string;
      readonly field: RequestField;
      /** The unit the heading says its masses are in; a request key itself says none. */
      readonly unit: Unit | null;
    }
  /** `meant` is the field whose heading it nearly is. */
  | { readonly kind: "unknown"; readonly text: string; readonly meant: RequestField | null }
  | { readonly kind: "blank" };

export function readHeading(cell: unknown): HeadingRead {
  const content = plainContent(cell);
  if (content === null) return { kind: "blank" };
  const text = String(content);
  const words = plain(text);
  const whole = FIELD_OF.get(words);
  if (whole !== undefined && !MASS_FIELDS.has(whole))
    return { kind: "known", text, field: whole, unit: null };
  const field = FIELD_OF.get(withoutUnit(words));
  if (field === undefined || !MASS_FIELDS.has(field)) return { kind: "unknown", text, meant: meantBy(words) };
  return { kind: "known", text, field, unit: unitSaid(text, field) };
}

function unitSaid(text: string, field: RequestField): Unit | null {
  const words = plain(text);
  if (text.toLowerCase() === field.toLowerCase()) return null;
  if (LB_ENDING.test(words)) return "lb";
  return KG_ENDING.test(words) ? "kg" : null;
}

function meantBy(words: string): RequestField | null {
  for (const [known, field] of FIELD_OF) {
    if (isNearMiss(MASS_FIELDS.has(field) ? withoutUnit(words) : words, known)) return field;
  }
  return null;
}

/** Whether a row holds headings: two known ones at least, and no number among its cells. */
export function isHeadingRow(cells: readonly unknown[]): boolean {
  if (cells.some((cell) => typeof cell === "number")) return false;
  return cells.filter((cell) => readHeading(cell).kind === "known").length >= 2;
}

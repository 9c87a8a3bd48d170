/** Checks of single input values. Each answers the value in its proper type, or what is wrong with it. */
import { isDay, type Day } from "./calendar/day";
import type { Allowed, ProblemCode } from "./outcome";

export type Checked<T> =
  { readonly value: T } | { readonly problem: { readonly code: ProblemCode; readonly fix: string | null } };

const wrong = (code: ProblemCode, fix: string | null = null) => ({ problem: { code, fix } }) as const;

/** Absent: undefined, null, or text of nothing but spaces. */
export function isBlank(given: unknown): boolean {
  return given === undefined || given === null || (typeof given === "string" && given.trim() === "");
}

type NumberAllowed = Extract<Allowed, { kind: "number" }>;

export function checkNumber(given: unknown, allowed: NumberAllowed): Checked<number> {
  if (typeof given === "string" && /^\s*[+-]?\d+,\d+\s*$/.test(given)) {
    return wrong("decimalComma", given.trim().replace(",", "."));
  }
  if (typeof given !== "number" || !Number.isFinite(given)) return wrong("notANumber");
  if (given < allowed.min || given > allowed.max) return wrong("outOfRange");
  if (allowed.whole && !Number.isInteger(given)) return wrong("notWhole");
  return { value: given };
}

/** One of a list of words, in any case, with hyphens, underscores or spaces between. */
export function checkWord<T extends string>(given: unknown, values: readonly T[]): Checked<T> {
  if (typeof given !== "string") return wrong("notOneOf");
  const plain = given
    .trim()
    .toLowerCase()
    .replace(/[-_\s]+/g, " ");
  const found = values.find((value) => value === plain);
  return found === undefined ? wrong("notOneOf") : { value: found };
}

export function checkYesNo(given: unknown): Checked<boolean> {
  if (typeof given === "boolean") return { value: given };
  const word = checkWord(given, ["yes", "no"]);
  return "value" in word ? { value: word.value === "yes" } : word;
}

export function checkDay(given: unknown): Checked<Day> {
  const text = typeof given === "string" ? given.trim() : given;
  if (typeof text !== "string" || !/^\d{4}-\d{2}-\d{2}$/.test(text)) return wrong("notADay");
  return isDay(text) ? { value: text } : wrong("noSuchDay");
}

/** A name is kept as it is given, but for spaces around it. A number is a name too. */
export function checkLifter(given: unknown): Checked<string> {
  if (typeof given === "number") return { value: String(given) };
  if (typeof given !== "string") return wrong("notText");
  return { value: given.trim() };
}

/** A class limit: a number, or text such as "120+" for the open class above it. */
export function checkClassLimit(
  given: unknown,
  allowed: NumberAllowed,
): Checked<{ limitKg: number; open: boolean }> {
  const open = typeof given === "string" ? /^\s*(\d+(?:\.\d+)?)\s*\+\s*$/.exec(given) : null;
  const limit = checkNumber(open ? Number(open[1]) : given, allowed);
  return "value" in limit ? { value: { limitKg: limit.value, open: open !== null } } : limit;
}

/** Input that is wrong: every problem at once, as data. The words are the add-in's. */

/** What a field accepts. */
export type Allowed =
  | {
      readonly kind: "number";
      readonly min: number;
      readonly max: number;
      readonly unit: string;
      readonly whole: boolean;
    }
  | { readonly kind: "oneOf"; readonly values: readonly string[] }
  | { readonly kind: "day" }
  | { readonly kind: "dayFrom"; readonly from: string; readonly to: string }
  | { readonly kind: "text"; readonly maxLength: number }
  | { readonly kind: "classLimit"; readonly min: number; readonly unit: string }
  | { readonly kind: "fields"; readonly names: readonly string[] }
  | { readonly kind: "object" };

export const PROBLEM_CODES = [
  "missing",
  "notANumber",
  "decimalComma",
  "outOfRange",
  "notWhole",
  "notOneOf",
  "notText",
  "notADay",
  "noSuchDay",
  "meetBeforeStart",
  "meetTooFar",
  "classBelowBodyweight",
  "tooLong",
  "formulaSign",
  "unusual",
  "unusualShare",
  "unknownField",
  "notAnObject",
] as const;
export type ProblemCode = (typeof PROBLEM_CODES)[number];

export interface Problem {
  readonly code: ProblemCode;
  /** `refused` stops the plan; `questioned` asks the coach to look again. */
  readonly severity: "refused" | "questioned";
  /** The request key, or a path below it such as `pins.weeks.0.kind`. */
  readonly path: string;
  readonly given: unknown;
  readonly allowed: Allowed;
  /** A value that would do, where one is plain from what was given. */
  readonly fix: string | null;
}

export type Outcome<T> =
  | { readonly ok: true; readonly value: T; readonly problems: readonly Problem[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Throws for a fault of ours, with the values that show it and a line on what to look at first. */
export function assert(
  condition: unknown,
  what: string,
  values: Record<string, unknown>,
  maybe: string,
): asserts condition {
  if (!condition) throw new Error(`${what}: ${JSON.stringify(values)}\nMaybe ${maybe}`);
}

/** Reads what was typed in the pane's form into a request for the engine, which judges it. */

export const FORM_FIELDS = [
  "lifter",
  "sex",
  "bodyweightKg",
  "trainingYears",
  "squatKg",
  "benchKg",
  "deadliftKg",
  "startDate",
  "meetDate",
  "classLimitKg",
  "roomInClass",
  "recovery",
  "explosive",
  "level",
  "hardWeeks",
  "prepWeeks",
  "weekStart",
  "arrangement",
] as const;
export type FormField = (typeof FORM_FIELDS)[number];

/** What stands in each field, exactly as typed; "" when blank. */
export type Typed = Readonly<Record<FormField, string>>;

const NUMBER_FIELDS: ReadonlySet<FormField> = new Set<FormField>([
  "bodyweightKg",
  "trainingYears",
  "squatKg",
  "benchKg",
  "deadliftKg",
  "classLimitKg",
  "hardWeeks",
  "prepWeeks",
]);

const PLAIN_DECIMAL = /^[+-]?(\d+\.?\d*|\.\d+)$/;

/** Whether `text` is a plain decimal number: "82.5", not "82,5", "8e1" or "82 kg". */
export function isPlainDecimal(text: string): boolean {
  return PLAIN_DECIMAL.test(text.trim());
}

/**
 * A request from typed text: a blank field is left out, a plain decimal in a number field becomes a number,
 * and anything else stays the text it is, so that the engine can name what is wrong with it.
 */
export function readForm(typed: Typed, unit: "kg" | "lb"): Record<string, unknown> {
  const request: Record<string, unknown> = { unit };
  for (const field of FORM_FIELDS) {
    const text = typed[field];
    if (text.trim() === "") continue;
    request[field] = NUMBER_FIELDS.has(field) && isPlainDecimal(text) ? Number(text.trim()) : text;
  }
  return request;
}

import type { DataValidation } from "hucre";
import { rangeRef } from "../../sheets/cell-ref";
import type { Validation } from "../../sheets/model";
import { toFileText } from "./file-text";

/** A file with a longer message, prompt or list does not open. */
const LONGEST = 255;

/** A wrong value is refused; a blank is always allowed. */
export function toDataValidation(validation: Validation): DataValidation {
  const range = rangeRef(validation.range);
  const { message, prompt } = validation;
  return {
    range,
    ...conditionOf(validation, range),
    allowBlank: true,
    errorStyle: "stop",
    showErrorMessage: true,
    errorMessage: short(message, "message", range),
    ...(prompt !== undefined && { showInputMessage: true, inputMessage: short(prompt, "prompt", range) }),
  };
}

function conditionOf(validation: Validation, range: string): Pick<DataValidation, "type" | "formula1"> {
  if (validation.kind === "list") {
    return { type: "list", formula1: `"${listOf(validation.values, range).replaceAll('"', '""')}"` };
  }
  const { kind, min, max } = validation;
  const between = { operator: "between", formula1: String(min), formula2: String(max) } as const;
  return { type: kind, ...between };
}

function listOf(values: readonly string[], range: string): string {
  const bad = values.find((value) => value.includes(",") || value.trim() !== value || value === "");
  if (bad !== undefined) {
    throw new Error(
      `The list of ${range} has the value "${bad}". Maybe it holds a comma, which ends a value there, or blanks at an end.`,
    );
  }
  return short(values.join(","), "list", range);
}

function short(text: string, what: string, range: string): string {
  if (text.length > LONGEST) {
    throw new Error(
      `The ${what} of the validation of ${range} has ${text.length} characters and may have ${LONGEST}. Maybe it can be said shorter.`,
    );
  }
  return toFileText(text);
}

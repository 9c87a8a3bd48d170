import {
  DataValidationErrorStyle,
  DataValidationOperator,
  DataValidationRenderMode,
  DataValidationType,
} from "@univerjs/core";
import type { IRange, ISheetDataValidationRule } from "@univerjs/core";
import type { Validation } from "../../sheets/model";
import { fromGridRange, toGridRange } from "./ranges";

const MS_PER_DAY = 86_400_000;
/** Serial number of 1970-01-01. */
const EPOCH_SERIAL = 25_569;

/** How the grid writes a validation down. A wrong value is refused; a blank is always allowed. */
export function toGridValidation(validation: Validation, uid: string): ISheetDataValidationRule {
  return {
    uid,
    ranges: [toGridRange(validation.range)],
    allowBlank: true,
    showErrorMessage: true,
    error: validation.message,
    errorStyle: DataValidationErrorStyle.STOP,
    ...(validation.prompt !== undefined && { showInputMessage: true, prompt: validation.prompt }),
    ...conditionOf(validation),
  };
}

function conditionOf(
  validation: Validation,
): Partial<ISheetDataValidationRule> & Pick<ISheetDataValidationRule, "type"> {
  if (validation.kind === "list") {
    const formula1 = JSON.stringify(validation.values);
    return { type: DataValidationType.LIST, formula1, renderMode: DataValidationRenderMode.ARROW };
  }
  const between = {
    operator: DataValidationOperator.BETWEEN,
    formula1: String(validation.min),
    formula2: String(validation.max),
  };
  return {
    type: validation.kind === "whole" ? DataValidationType.WHOLE : DataValidationType.DATE,
    ...between,
  };
}

/** One validation per range: a coach who inserts rows can split a rule's range in two. */
export function fromGridValidation(rule: ISheetDataValidationRule): Validation[] {
  return rule.ranges.map((range) => validationOf(rule, range));
}

function validationOf(rule: ISheetDataValidationRule, gridRange: IRange): Validation {
  const common = {
    range: fromGridRange(gridRange),
    message: rule.error ?? "",
    ...(rule.prompt !== undefined && { prompt: rule.prompt }),
  };
  const bounds = () => ({ min: toSerial(rule.formula1), max: toSerial(rule.formula2) });
  switch (rule.type) {
    case DataValidationType.LIST:
      return { ...common, kind: "list", values: JSON.parse(rule.formula1 ?? "[]") as string[] };
    case DataValidationType.WHOLE:
      return { ...common, kind: "whole", ...bounds() };
    case DataValidationType.DATE:
      return { ...common, kind: "date", ...bounds() };
    default:
      throw new Error(
        `The grid holds a validation of type ${rule.type}. Maybe it was pasted from elsewhere.`,
      );
  }
}

/** The grid turns the bounds of a date rule into text such as 2026-03-28. */
function toSerial(bound: string | undefined): number {
  const date = /^(\d{4})-(\d{2})-(\d{2})/.exec(bound ?? "");
  const serial = date
    ? Date.UTC(Number(date[1]), Number(date[2]) - 1, Number(date[3])) / MS_PER_DAY + EPOCH_SERIAL
    : Number(bound);
  if (Number.isNaN(serial))
    throw new Error(`The bound ${bound} of a validation is neither a number nor a day.`);
  return serial;
}

/** The form's state as plain data, and the few things that may happen to it. */
import { kgFromLb, lbFromKg, type Unit } from "../../../engine/index";
import { FORM_FIELDS, isPlainDecimal, type FormField, type Typed } from "../../read/form";
import { exampleForm } from "./example";
import { FIELDS } from "./fields";

/** The fields that hold a mass, in the form's unit. */
const MASS_FIELDS: readonly FormField[] = FORM_FIELDS.filter((field) => FIELDS[field].kind === "mass");

/** The last change of unit: what was typed before it and what it became. */
export interface Conversion {
  readonly from: Unit;
  readonly before: Typed;
  readonly after: Typed;
}

export interface FormState {
  readonly unit: Unit;
  readonly typed: Typed;
  readonly conversion: Conversion | null;
  /** The key of the runner-up chosen; null for the plan that costs least. */
  readonly choice: string | null;
}

/** The form as it first appears: an invented lifter, so that a plan is there to look at. `today` is an ISO day. */
export function openForm(today: string): FormState {
  return { unit: "kg", typed: exampleForm(today), conversion: null, choice: null };
}

export function typeInto(state: FormState, field: FormField, text: string): FormState {
  return { ...state, typed: { ...state.typed, [field]: text } };
}

export function choosePlan(state: FormState, choice: string | null): FormState {
  return { ...state, choice };
}

/** Changes the unit and converts the masses typed. Changing straight back restores exactly what was typed. */
export function changeUnit(state: FormState, unit: Unit): FormState {
  if (unit === state.unit) return state;
  const after: Record<FormField, string> = { ...state.typed };
  for (const field of MASS_FIELDS) {
    after[field] = restored(state, field, unit) ?? convertText(state.typed[field], unit, field);
  }
  return { ...state, unit, typed: after, conversion: { from: state.unit, before: state.typed, after } };
}

function restored(state: FormState, field: FormField, unit: Unit): string | null {
  const last = state.conversion;
  return last !== null && last.from === unit && last.after[field] === state.typed[field]
    ? last.before[field]
    : null;
}

/** Bodyweight and class limit keep two decimals, rounded down, so that a lifter stays in the class; bests keep one. */
function convertText(text: string, to: Unit, field: FormField): string {
  const open = field === "classLimitKg" && text.trim().endsWith("+");
  const number = open ? text.trim().slice(0, -1) : text;
  if (!isPlainDecimal(number)) return text;
  const value = to === "lb" ? lbFromKg(Number(number)) : kgFromLb(Number(number));
  const places = field === "bodyweightKg" || field === "classLimitKg" ? 2 : 1;
  const rounded = places === 2 ? Math.floor(value * 100 + 1e-6) / 100 : Math.round(value * 10) / 10;
  return `${Number(rounded.toFixed(places))}${open ? "+" : ""}`;
}

/** What to say beside the unit after a change of it; null when nothing typed was converted. */
export function conversionHint({ conversion, typed, unit }: FormState): string | null {
  if (conversion === null) return null;
  const changed = MASS_FIELDS.filter((field) => conversion.before[field] !== conversion.after[field]);
  if (!changed.some((field) => typed[field] === conversion.after[field])) return null;
  return `Bodyweight, bests and class limit were converted from ${conversion.from} to ${unit}. Switching back restores what you typed.`;
}

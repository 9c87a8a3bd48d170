/** Every field of the form as data: its label, its unit and what it offers. */
import {
  ARRANGEMENTS,
  LEVELS,
  RECOVERIES,
  ROOMS,
  SEXES,
  WEEKDAYS,
  type Arrangement,
  type Unit,
} from "../../../engine/index";
import type { FormField } from "../../read/form";
import { FIELD_NAMES } from "../../sheets/words";

export interface Option {
  readonly value: string;
  readonly label: string;
}

/** `hint` says what a blank stands for. */
export type FieldSpec = { readonly hint?: string } & (
  | { readonly kind: "text" }
  | { readonly kind: "day" }
  | { readonly kind: "number" }
  | { readonly kind: "mass" }
  /** `blank` words the choice of leaving the field to the assessment. */
  | { readonly kind: "choice"; readonly options: readonly Option[]; readonly blank?: string }
);

const capitalise = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const choices = (values: readonly string[]): readonly Option[] =>
  values.map((value) => ({ value, label: capitalise(value) }));

const [SUNDAY, ...OTHER_DAYS] = WEEKDAYS;

const ARRANGEMENT_LABELS: Readonly<Record<Arrangement, string>> = {
  together: "All together",
  "as needed": "Each as it needs",
  spread: "By own targets first",
};

export const FIELDS: Readonly<Record<FormField, FieldSpec>> = {
  lifter: { kind: "text" },
  sex: { kind: "choice", options: choices(SEXES) },
  bodyweightKg: { kind: "mass" },
  trainingYears: { kind: "number" },
  squatKg: { kind: "mass" },
  benchKg: { kind: "mass" },
  deadliftKg: { kind: "mass" },
  startDate: { kind: "day" },
  meetDate: { kind: "day" },
  classLimitKg: { kind: "mass", hint: "Blank: from bodyweight" },
  roomInClass: { kind: "choice", options: choices(ROOMS) },
  recovery: { kind: "choice", options: choices(RECOVERIES) },
  explosive: { kind: "choice", options: choices(["no", "yes"]) },
  level: { kind: "choice", blank: "As assessed", options: choices(LEVELS) },
  hardWeeks: { kind: "number", hint: "Blank: as assessed" },
  prepWeeks: { kind: "number", hint: "Blank: as assessed" },
  weekStart: { kind: "choice", options: choices([...OTHER_DAYS, SUNDAY]) },
  arrangement: {
    kind: "choice",
    options: ARRANGEMENTS.map((value) => ({ value, label: ARRANGEMENT_LABELS[value] })),
  },
};

/** A field's label: the name it has everywhere else; the lifter's stands under that heading already. */
export function labelOf(field: FormField): string {
  return field === "lifter" ? "Name" : FIELD_NAMES[field];
}

/** The fields that are folded away, and what each holds when the coach has not touched it. */
export const FINE_POINTS = {
  classLimitKg: "",
  roomInClass: "some",
  recovery: "normal",
  explosive: "no",
  level: "",
  hardWeeks: "",
  prepWeeks: "",
  weekStart: "monday",
  arrangement: "as needed",
} as const satisfies Partial<Record<FormField, string>>;

/** The unit written after a label, or null. */
export function unitOf(field: FormField, unit: Unit): string | null {
  return FIELDS[field].kind === "mass" ? unit : null;
}

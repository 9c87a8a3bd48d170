/** Problems sorted to the fields they belong beside. */
import type { Problem } from "../../../engine/index";
import { FORM_FIELDS, type FormField } from "../../read/form";

export interface ShownProblem {
  readonly severity: Problem["severity"];
  readonly text: string;
}

export interface SortedProblems {
  readonly byField: Readonly<Partial<Record<FormField, readonly ShownProblem[]>>>;
  /** Problems of no single field of the form. */
  readonly other: readonly ShownProblem[];
}

const isFormField = (path: string): path is FormField => (FORM_FIELDS as readonly string[]).includes(path);

/** Sorts problems by field and words each with `word`. */
export function sortProblems(
  problems: readonly Problem[],
  word: (problem: Problem) => string,
): SortedProblems {
  const byField: Partial<Record<FormField, ShownProblem[]>> = {};
  const other: ShownProblem[] = [];
  for (const problem of problems) {
    const shown = { severity: problem.severity, text: word(problem) };
    if (isFormField(problem.path)) (byField[problem.path] ??= []).push(shown);
    else other.push(shown);
  }
  return { byField, other };
}

/** The fields whose problems stop the plan, in the order of the form. */
export function refusedFields(problems: SortedProblems): readonly FormField[] {
  return FORM_FIELDS.filter((field) => problems.byField[field]?.some((one) => one.severity === "refused"));
}

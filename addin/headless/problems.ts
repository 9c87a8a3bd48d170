/** Every problem of a row in one form, each with a sentence that names the field, what was given and what is allowed. */
import type { RowAnswer } from "../read/answer-row";
import { isRefused, tellTableProblem } from "../read/table-problem";
import { allowedText, problemText } from "../sheets/words";

export interface ProblemJson {
  readonly field: string;
  readonly given: unknown;
  readonly allowed: string;
  readonly message: string;
  readonly severity: "refused" | "questioned";
}

export function tellProblems({ answer, tableProblems }: Omit<RowAnswer, "lifter">): readonly ProblemJson[] {
  return [
    ...tableProblems.map((problem): ProblemJson => {
      const { field, given, allowed, message } = tellTableProblem(problem);
      const severity = isRefused(problem) ? "refused" : "questioned";
      return { field, given, allowed, message, severity };
    }),
    ...answer.problems.map((problem): ProblemJson => {
      const { path, given, severity } = problem;
      const allowed = allowedText(problem.allowed);
      return {
        field: path,
        given: given ?? null,
        allowed,
        message: problemText(problem),
        severity,
      };
    }),
  ];
}

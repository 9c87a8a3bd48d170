/** What is wrong with each row, in whole sentences; "" when nothing is. */
import type { RowAnswer } from "../read/answer-row";
import { isRefused, tellTableProblem } from "../read/table-problem";
import { nearestText, problemText } from "../sheets/words";
import { eachLifter, readLifters, type ResultCell } from "./cell";

export function checkRows(rows: unknown, headings: unknown): ResultCell[][] {
  return eachLifter(readLifters(rows, headings), 1, (row) => [findings(row).join(" ")]);
}

/** Refusals first, then why no plan fits, then what is only questioned. */
function findings({ answer, tableProblems }: RowAnswer): readonly string[] {
  const told = [
    ...tableProblems.map((problem) => ({
      isRefused: isRefused(problem),
      message: tellTableProblem(problem).message,
    })),
    ...answer.problems.map((problem) => ({
      isRefused: problem.severity === "refused",
      message: problemText(problem),
    })),
  ];
  return [
    ...told.filter((each) => each.isRefused).map(({ message }) => message),
    ...(answer.status === "doesNotFit" ? nearestText(answer) : []),
    ...told.filter((each) => !each.isRefused).map(({ message }) => `Please check: ${message}`),
  ];
}

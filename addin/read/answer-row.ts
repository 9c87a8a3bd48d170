/** One row of a table, answered by the engine. */
import { planLifter, type Answer, type Asked } from "../../engine/index";
import { isRefused, type TableProblem } from "./table-problem";

/** A row as it was read. A LifterRow is one; a request out of a file may be anything at all. */
export interface RowRead {
  readonly row: number;
  readonly input: unknown;
  readonly problems: readonly TableProblem[];
}

export interface RowAnswer {
  readonly row: number;
  /** The name as the row gives it; null when blank or no text. */
  readonly lifter: string | null;
  readonly answer: Answer;
  /** What is wrong with the table or the row's cells, beside what the engine says of its values. */
  readonly tableProblems: readonly TableProblem[];
}

/** Plans a row. Where the table itself is in doubt the row is invalid, whatever its values would give. */
export function answerRow({ row, input, problems }: RowRead, asked: Asked = {}): RowAnswer {
  const answer = planLifter(input, asked);
  const isDoubtful = problems.some(isRefused);
  return {
    row,
    lifter: nameIn(input),
    answer: isDoubtful ? { status: "invalid", problems: answer.problems } : answer,
    tableProblems: problems,
  };
}

function nameIn(input: unknown): string | null {
  if (typeof input !== "object" || input === null) return null;
  const given = (input as Record<string, unknown>)["lifter"];
  const text = typeof given === "string" ? given.trim() : typeof given === "number" ? String(given) : "";
  return text === "" ? null : text;
}

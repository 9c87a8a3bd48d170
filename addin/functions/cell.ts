/** Answers as cells: one result row a lifter, and plain words where there is no result. */
import type { Answer, DoesNotFit, Planned } from "../../engine/index";
import { answerRow, type RowAnswer } from "../read/answer-row";
import { readTable, type Table } from "../read/table";
import { isRefused, tellTableProblem } from "../read/table-problem";
import { dayText, problemText } from "../sheets/words";
import { toRows } from "./arguments";

export type ResultCell = string | number;
export type Result = readonly ResultCell[];

export const NO_LIFTERS = "No lifters: the range holds no rows below its headings.";

/** The lifters of a range, with its headings in it or elsewhere. */
export function readLifters(rows: unknown, headings: unknown): Table {
  return readTable(toRows(rows), { headings: toRows(headings), zeroIsBlank: true });
}

/**
 * One result row for every row below the headings: blanks for a blank row; for any other whatever `toCells`
 * makes of its answer, filled up with blanks to `width`.
 * @returns always a rectangle of one row at least.
 */
export function eachLifter(
  { rows }: Table,
  width: number,
  toCells: (answered: RowAnswer, index: number) => Result,
): ResultCell[][] {
  if (rows.length === 0) return [fill([NO_LIFTERS], width)];
  return rows.map((row, index) =>
    fill(row.kind === "blank" ? [] : toCells(answerRow(row, { brief: true }), index), width),
  );
}

/** Cells for a row whose values could be read; else the reason why not. */
export function assessedCells(
  { answer, tableProblems }: RowAnswer,
  toCells: (answer: Planned | DoesNotFit) => Result,
): Result {
  return answer.status === "invalid" ? [reasonText({ answer, tableProblems })] : toCells(answer);
}

/** Cells for a row that has a plan; else the reason why not. */
export function plannedCells(answered: RowAnswer, toCells: (answer: Planned) => Result): Result {
  return assessedCells(answered, (answer) =>
    answer.status === "planned" ? toCells(answer) : [misfitText(answer)],
  );
}

/** Why a row could not be read: its first problem, and how many more there are. */
function reasonText({ answer, tableProblems }: Pick<RowAnswer, "answer" | "tableProblems">): string {
  const messages = refusals(answer, tableProblems);
  const more = messages.length - 1;
  return more === 0 ? messages[0]! : `${messages[0]!} And ${more} more: MEETWARD.CHECK tells all.`;
}

function refusals(answer: Answer, tableProblems: RowAnswer["tableProblems"]): readonly string[] {
  return [
    ...tableProblems.filter(isRefused).map((problem) => tellTableProblem(problem).message),
    ...answer.problems.filter(({ severity }) => severity === "refused").map(problemText),
  ];
}

/** Why there is no plan, short enough for a cell. */
export function misfitText({ nearest }: DoesNotFit): string {
  if (nearest.earliestMeetDate === null) return "Does not fit: MEETWARD.CHECK tells why.";
  return `Does not fit: the earliest meet day that does is ${dayText(nearest.earliestMeetDate)}.`;
}

function fill(cells: Result, width: number): ResultCell[] {
  return Array.from({ length: width }, (_, index) => cells[index] ?? "");
}

/** The workbook of a headless run: an overview of all lifters, then each plan's own sheets. */
import { existsSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import type { RowAnswer } from "../read/answer-row";
import { overviewSheet, planSheets, type SheetModel } from "../sheets/index";
import { toXlsx } from "../workbook/file/index";
import { BadCall } from "./bad-call";
import { tellTableProblem } from "../read/table-problem";

/** Throws BadCall where a file cannot or must not be written. Asked before any work is done. */
export function refuseTarget(file: string, force: boolean): void {
  if (!existsSync(dirname(file))) throw new BadCall(`${file}: there is no folder ${dirname(file)}.`);
  if (!force && existsSync(file)) {
    throw new BadCall(
      `${file}: it exists already and is left as it is. Another name, or --force to replace it.`,
    );
  }
}

export async function writeWorkbook(
  answers: readonly RowAnswer[],
  file: string,
  force: boolean,
): Promise<void> {
  const bytes = await toXlsx(sheetsOf(answers), { title: "Meetward plans" });
  try {
    writeFileSync(file, bytes, { flag: force ? "w" : "wx" });
  } catch (problem) {
    const code = (problem as NodeJS.ErrnoException).code;
    throw new BadCall(`${file}: it cannot be written (${code}).`);
  }
}

function sheetsOf(answers: readonly RowAnswer[]): readonly SheetModel[] {
  const rows = answers.map(({ row, lifter, answer, tableProblems }) => ({
    row,
    lifter,
    answer,
    remarks: tableProblems.map((problem) => tellTableProblem(problem).message),
  }));
  const sheets = [overviewSheet(rows, [])];
  const taken = sheets.map(({ name }) => name);
  for (const { answer } of answers) {
    if (answer.status !== "planned") continue;
    const added = planSheets(answer, taken);
    sheets.push(...added);
    taken.push(...added.map(({ name }) => name));
  }
  return sheets;
}

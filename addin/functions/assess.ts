/** What the assessment alone says of each lifter; a row that does not fit still has it. */
import { assessedCells, eachLifter, readLifters, type ResultCell } from "./cell";

export function assessLevel(rows: unknown, headings: unknown): ResultCell[][] {
  return eachLifter(readLifters(rows, headings), 1, (row) =>
    assessedCells(row, ({ assessment }) => [assessment.level]),
  );
}

export function assessHardWeeks(rows: unknown, headings: unknown): ResultCell[][] {
  return eachLifter(readLifters(rows, headings), 1, (row) =>
    assessedCells(row, ({ assessment }) => [assessment.hardWeeks]),
  );
}

/** The least and the most weeks, and those planned: words in their place where no plan fits. */
export function assessPrepWeeks(rows: unknown, headings: unknown): ResultCell[][] {
  return eachLifter(readLifters(rows, headings), 3, (row) =>
    assessedCells(row, (answer) => {
      const { least, most } = answer.assessment.prepRange;
      return [least, most, answer.status === "planned" ? answer.plan.directedWeeks : "does not fit"];
    }),
  );
}

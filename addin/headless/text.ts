/** Answers as text for a terminal: one short table a lifter. */
import { LIFTS, type DoesNotFit, type Plan, type Planned } from "../../engine/index";
import type { RowAnswer } from "../read/answer-row";
import { cautionText, nearestText, planInWords, SHORT_CAUTION } from "../sheets/words";
import { printable } from "./printable";
import { tellProblems } from "./problems";

const HEADS = ["Week", "Starts", "To meet", "Kind", "Squat", "Bench", "Deadlift"] as const;

/** Stands once below all plans. */
export const CLOSING = SHORT_CAUTION;

export function toText(answered: RowAnswer): string {
  const { row, lifter, answer } = answered;
  const name = lifter === null ? "no name" : printable(lifter);
  const problems = tellProblems(answered).map(({ message, severity }) =>
    severity === "questioned" ? `Please check: ${printable(message)}` : printable(message),
  );
  const lines = (): readonly string[] => {
    switch (answer.status) {
      case "invalid":
        return ["Not read."];
      case "doesNotFit":
        return [assessmentLine(answer), ...nearestText(answer)];
      case "planned":
        return [
          assessmentLine(answer),
          ...planInWords(answer),
          ...answer.cautions
            .filter(({ code }) => code !== "training")
            .map((each) => `Caution: ${cautionText(each)}`),
          ...weekTable(answer.plan),
        ];
    }
  };
  return [`Row ${row}: ${name}`, ...[...problems, ...lines()].map((line) => `  ${line}`)].join("\n");
}

function assessmentLine({ assessment }: Planned | DoesNotFit): string {
  const { level, size, className, hardWeeks, prepRange } = assessment;
  const preparation = `${prepRange.least} to ${prepRange.most} weeks of preparation`;
  return `Level ${level}, class ${className} (${size}); ${hardWeeks} hard weeks a mesocycle; ${preparation}.`;
}

function weekTable({ weeks }: Plan): readonly string[] {
  const rows = weeks.map(({ week, startDate, weeksToMeet, kind, phase }) => [
    String(week),
    startDate,
    String(weeksToMeet),
    kind,
    ...LIFTS.map((lift) => phase?.[lift] ?? "-"),
  ]);
  const table = [[...HEADS], ...rows];
  const widths = HEADS.map((_, column) => Math.max(...table.map((cells) => cells[column]!.length)));
  return table.map((cells) =>
    cells
      .map((cell, column) => cell.padEnd(widths[column]!))
      .join("  ")
      .trimEnd(),
  );
}

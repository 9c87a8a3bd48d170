/** A plan as a plain text table, to be read by eye when it changes. */
import { LIFTS, type Answer } from "../../../engine";
import { dayText, nearestText, planInWords, sumText } from "../../../addin/sheets/words";

export function planTable(answer: Answer): string {
  if (answer.status === "invalid") return answer.problems.map((problem) => problem.code).join("\n");
  const { assessment, decisions } = answer;
  const hardWeeks = decisions.find((decision) => decision.about === "hardWeeks");
  const head = [
    `class ${assessment.className} (${assessment.size}), ${assessment.level}, ${assessment.hardWeeks} hard weeks, useful ${assessment.prepRange.least} to ${assessment.prepRange.most} weeks`,
    ...(hardWeeks?.about === "hardWeeks"
      ? [sumText(hardWeeks.given.items, hardWeeks.given.sumTenths, hardWeeks.given.assessed)]
      : []),
  ];
  if (answer.status === "doesNotFit") return [...head, ...nearestText(answer)].join("\n");
  const weeks = answer.plan.weeks.map((week) =>
    [
      String(week.week).padStart(2),
      dayText(week.startDate).padEnd(15),
      String(week.weeksToMeet).padStart(2),
      String(week.mesocycle ?? "").padStart(1),
      week.kind.padEnd(6),
      ...LIFTS.map((lift) => (week.phase?.[lift] ?? "").padEnd(11)),
    ]
      .join("  ")
      .trimEnd(),
  );
  return [...head, ...planInWords(answer), "", ...weeks].join("\n");
}

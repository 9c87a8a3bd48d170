/** Every lifter of a roster in one row: what came out, or what is wrong. */
import { LIFTS, type Answer } from "../../engine";
import { SHORT_CAUTION } from "./caution-text";
import { cleanText, lifterName } from "./clean-text";
import { daySerial } from "./day-text";
import { BASE_LOOKS } from "./looks";
import type { Cell, CellRange, SheetModel } from "./model";
import { nearestText } from "./nearest-text";
import { rhythmText, splitText } from "./plan-text";
import { problemText } from "./problem-text";
import { freeSheetNames } from "./sheet-name";
import { heightFor } from "./text-height";

export interface OverviewRow {
  /** The lifter's row in the roster, as the roster counts. */
  readonly row: number;
  readonly lifter: string | null;
  readonly answer: Answer;
}

const TABLE = [
  { head: "Row", width: 6, style: "boxNumber" },
  { head: "Lifter", width: 22, style: "boxBold" },
  { head: "Status", width: 14, style: "box" },
  { head: "Level", width: 14, style: "box" },
  { head: "Hard weeks", width: 7, style: "boxNumber" },
  { head: "Bridge weeks", width: 8, style: "boxNumber" },
  { head: "Directed weeks", width: 9, style: "boxNumber" },
  { head: "Mesocycles", width: 22, style: "box" },
  { head: "Squat (weeks)", width: 20, style: "box" },
  { head: "Bench (weeks)", width: 20, style: "box" },
  { head: "Deadlift (weeks)", width: 20, style: "box" },
  { head: "Starts", width: 16, style: "boxDate" },
  { head: "Meet", width: 16, style: "boxDate" },
  { head: "What to look at", width: 60, style: "box" },
] as const;
const HEAD_ROW = 2;

type Entry = string | number | null;

/** @param takenNames sheet names in use */
export function overviewSheet(answers: readonly OverviewRow[], takenNames: readonly string[]): SheetModel {
  const cells: Cell[] = [
    { row: 0, column: 0, value: "Overview", style: "title" },
    { row: 1, column: 0, value: SHORT_CAUTION, style: "pointer" },
    ...TABLE.map(({ head }, column) => ({ row: HEAD_ROW, column, value: head, style: "headLeft" })),
  ];
  const rowHeights: Record<number, number> = { 0: 26, 1: 20, [HEAD_ROW]: 34 };
  answers.forEach((answer, index) => {
    const row = HEAD_ROW + 1 + index;
    const entries = entriesOf(answer);
    entries.forEach((value, column) => {
      const style = TABLE[column]!.style;
      cells.push(value === null ? { row, column, style } : { row, column, value, style });
    });
    rowHeights[row] = heightFor(
      entries.map((entry, column) => ({
        text: typeof entry === "string" ? entry : "",
        width: TABLE[column]!.width,
      })),
    );
  });
  const wide = (row: number): CellRange => ({ row, column: 0, rows: 1, columns: TABLE.length });
  return {
    name: freeSheetNames(["Overview"], null, takenNames)[0]!,
    columns: TABLE.map(({ width }) => ({ width })),
    rowHeights,
    cells,
    styles: BASE_LOOKS,
    merges: [wide(0), wide(1)],
    freeze: { rows: HEAD_ROW + 1, columns: 0 },
    names: [],
    validations: [],
    conditionalFormats: [],
    notes: [],
    print: {
      orientation: "landscape",
      fitWidth: true,
      repeatRows: [HEAD_ROW, HEAD_ROW],
      area: { row: 0, column: 0, rows: HEAD_ROW + 1 + answers.length, columns: TABLE.length },
      footer: "&L&A&RPage &P of &N",
    },
  };
}

const STATUS_WORDS = { planned: "planned", doesNotFit: "does not fit", invalid: "not read" } as const;

/** One entry a column of TABLE; null where there is none. */
function entriesOf({ row, lifter, answer }: OverviewRow): Entry[] {
  const first: Entry[] = [row, lifterName(lifter), STATUS_WORDS[answer.status]];
  const problems = answer.problems.map((problem) => cleanText(problemText(problem)));
  const blanks = (count: number): Entry[] => Array.from({ length: count }, () => null);
  switch (answer.status) {
    case "invalid":
      return [...first, ...blanks(TABLE.length - first.length - 1), problems.join("\n")];
    case "doesNotFit": {
      const { assessment, request } = answer;
      const days = [daySerial(request.startDate), daySerial(request.meetDate)];
      const words = [...nearestText(answer), ...problems].join("\n");
      return [...first, assessment.level, assessment.hardWeeks, ...blanks(6), ...days, words];
    }
    case "planned": {
      const { assessment, plan, request } = answer;
      const rhythm = rhythmText(plan.mesocycles.map((mesocycle) => mesocycle.hardWeeks));
      const days = [daySerial(request.startDate), daySerial(request.meetDate)];
      return [
        ...first,
        assessment.level,
        assessment.hardWeeks,
        plan.bridgeWeeks,
        plan.directedWeeks,
        rhythm,
        ...LIFTS.map((lift) => splitText(plan.lifts[lift])),
        ...days,
        problems.length === 0 ? null : problems.join("\n"),
      ];
    }
  }
}

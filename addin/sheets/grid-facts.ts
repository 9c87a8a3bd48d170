/** The lifter and meet block above the weeks. */
import { assert, daysBetween, type Planned } from "../../engine";
import { classLimitText } from "./assessment-text";
import { cellRef, rangeRef } from "./cell-ref";
import { SHORT_CAUTION } from "./caution-text";
import { lifterName } from "./clean-text";
import { capitalised } from "./count-text";
import { daySerial } from "./day-text";
import {
  acrossRow,
  COLUMNS,
  FACT_COLUMNS,
  FACT_ROWS,
  FACTS_ROW,
  FIRST_WEEK_ROW,
  LAST_COLUMN,
  POINTER_ROW,
  TITLE_ROW,
  weekColumn,
  type GridLayout,
} from "./grid-layout";
import type { Cell, CellRange } from "./model";

interface Fact {
  readonly label: string;
  readonly cell: Pick<Cell, "value" | "formula" | "style">;
}

export interface Block {
  readonly cells: readonly Cell[];
  readonly merges: readonly CellRange[];
}

/** Row by row, FACT_COLUMNS.length facts a row; the meet day and the week's first day are inputs. */
function factsOf({ request, assessment, plan }: Planned, layout: GridLayout): readonly Fact[] {
  const firstStart = cellRef(FIRST_WEEK_ROW, COLUMNS.starts);
  const daysLate = Math.max(0, daysBetween(plan.weeks[0]!.startDate, request.startDate));
  return [
    { label: "Lifter", cell: { value: lifterName(request.lifter), style: "inputText" } },
    { label: "Meet day", cell: { value: daySerial(plan.meetDate), style: "inputDate" } },
    { label: "Weeks start on", cell: { value: capitalised(request.weekStart), style: "inputWord" } },
    { label: "Class", cell: { value: classLimitText(assessment.className), style: "fact" } },
    { label: "Level", cell: { value: assessment.level, style: "fact" } },
    {
      label: "Directed weeks",
      cell: { formula: `=${cellRef(layout.directedRow, COLUMNS.squat)}`, style: "factNumber" },
    },
    {
      label: "Training starts",
      cell: { formula: daysLate === 0 ? `=${firstStart}` : `=${firstStart}+${daysLate}`, style: "factDate" },
    },
    { label: "Hard weeks", cell: { value: assessment.hardWeeks, style: "factNumber" } },
    {
      label: "Mesocycles",
      cell: { formula: `=MAX(${rangeRef(weekColumn(layout, COLUMNS.mesocycle))})`, style: "factNumber" },
    },
  ];
}

const HINT =
  "Framed cells are yours to change: meet day, kinds, phases, notes. Dates, counts, colours and checks follow.";

export function factBlock(answer: Planned, layout: GridLayout): Block {
  const facts = factsOf(answer, layout);
  assert(
    facts.length === FACT_ROWS * FACT_COLUMNS.length,
    "the block of facts has gaps",
    { facts: facts.length },
    "a fact was added without a row in grid-layout.ts",
  );
  const cells: Cell[] = [];
  const merges: CellRange[] = [];
  facts.forEach(({ label, cell }, index) => {
    const row = FACTS_ROW + Math.floor(index / FACT_COLUMNS.length);
    const place = FACT_COLUMNS[index % FACT_COLUMNS.length]!;
    const spans = [
      { span: place.label, cell: { value: `${label}:`, style: "label" } },
      { span: place.value, cell },
    ];
    for (const { span, cell: content } of spans) {
      const [from, to] = span;
      cells.push({ row, column: from, ...content });
      if (to > from) {
        merges.push(acrossRow(row, from, to));
        for (let column = from + 1; column <= to; column++)
          cells.push({ row, column, style: content.style! });
      }
    }
  });
  const hint = { row: FACTS_ROW, column: COLUMNS.check, rows: FACT_ROWS, columns: 2 };
  cells.push({ row: hint.row, column: hint.column, value: HINT, style: "faint" });
  merges.push(hint);
  return { cells, merges };
}

/** The title follows the lifter's cell; the pointer follows the place of the cautions. */
export function titleBlock(layout: GridLayout): Block {
  const lifterCell = cellRef(FACTS_ROW, FACT_COLUMNS[0].value[0]);
  const readFirst = `ROW(${cellRef(layout.readFirstRow, 0)})`;
  return {
    cells: [
      { row: TITLE_ROW, column: 0, formula: `="Week plan: "&${lifterCell}`, style: "title" },
      {
        row: POINTER_ROW,
        column: 0,
        formula: `="Read first, row "&${readFirst}&": ${SHORT_CAUTION}"`,
        style: "pointer",
      },
    ],
    merges: [acrossRow(TITLE_ROW, 0, LAST_COLUMN), acrossRow(POINTER_ROW, 0, LAST_COLUMN)],
  };
}

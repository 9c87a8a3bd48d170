/** The week grid: one row a week, alive without the add-in. */
import { KINDS, LIFTS, LIMITS, PHASES, WEEKDAYS, type Planned } from "../../engine";
import { cellRef } from "./cell-ref";
import { PHASE_COLOURS } from "./colours";
import { capitalised } from "./count-text";
import { daySerial } from "./day-text";
import { factBlock, titleBlock } from "./grid-facts";
import {
  COLUMNS,
  FIRST_LIFT_COLUMN,
  FIRST_WEEK_ROW,
  GAP_ROW,
  HEAD_ROW,
  LAST_COLUMN,
  layGrid,
  MEET_DAY,
  POINTER_ROW,
  TITLE_ROW,
  WEEK_START,
  WIDTHS,
  weekColumn,
  type GridLayout,
} from "./grid-layout";
import { totalsBlock } from "./grid-totals";
import { GRID_LOOKS, KIND_LOOKS } from "./looks";
import type { ConditionalFormat, SheetModel, Validation } from "./model";
import { readFirstBlock } from "./read-first";
import { headCells, weekCells } from "./week-rows";

/** @param name a free sheet name */
export function weekGridSheet(answer: Planned, name: string): SheetModel {
  const layout = layGrid(answer.plan.weeks.length);
  const readFirst = readFirstBlock(answer, layout);
  const blocks = [titleBlock(layout), factBlock(answer, layout), totalsBlock(layout), readFirst];
  return {
    name,
    columns: WIDTHS.map((width) => ({ width })),
    rowHeights: { [TITLE_ROW]: 26, [POINTER_ROW]: 20, [GAP_ROW]: 8, [HEAD_ROW]: 20, ...readFirst.rowHeights },
    cells: [
      ...blocks.flatMap((block) => block.cells),
      ...headCells(),
      ...answer.plan.weeks.flatMap((week) => weekCells(week, layout)),
    ],
    styles: GRID_LOOKS,
    merges: blocks.flatMap((block) => block.merges),
    freeze: { rows: HEAD_ROW + 1, columns: 0 },
    names: [],
    validations: validations(answer, layout),
    conditionalFormats: conditionalFormats(layout),
    notes: [],
    print: {
      orientation: "landscape",
      fitWidth: true,
      repeatRows: [HEAD_ROW, HEAD_ROW],
      area: { row: 0, column: 0, rows: readFirst.lastRow + 1, columns: LAST_COLUMN + 1 },
      footer: "&L&A&RPage &P of &N",
    },
  };
}

function validations({ plan }: Planned, layout: GridLayout): Validation[] {
  const meetDay = daySerial(plan.meetDate);
  const horizonDays = LIMITS.horizonWeeks.max * 7;
  return [
    {
      kind: "date",
      range: { ...MEET_DAY, rows: 1, columns: 1 },
      min: meetDay - horizonDays,
      max: meetDay + horizonDays,
      message: "A date is wanted here: the day of the meet.",
      prompt: "Change it, and every week's dates follow.",
    },
    {
      kind: "list",
      range: { ...WEEK_START, rows: 1, columns: 1 },
      values: WEEKDAYS.map(capitalised),
      message: "A day of the week is wanted here.",
    },
    {
      kind: "list",
      range: weekColumn(layout, COLUMNS.kind),
      values: KINDS,
      message: `Allowed: ${KINDS.join(", ")}.`,
    },
    {
      kind: "list",
      range: weekColumn(layout, FIRST_LIFT_COLUMN, LIFTS.length),
      values: PHASES,
      message: `Allowed: ${PHASES.join(", ")}; blank in a bridge week.`,
    },
  ];
}

/** Phases colour their own cells; the kind of week colours the cells around them. */
function conditionalFormats(layout: GridLayout): ConditionalFormat[] {
  const lifts = weekColumn(layout, FIRST_LIFT_COLUMN, LIFTS.length);
  const around = [
    weekColumn(layout, 0, FIRST_LIFT_COLUMN),
    weekColumn(layout, COLUMNS.check, LAST_COLUMN - COLUMNS.check + 1),
  ];
  const kind = cellRef(FIRST_WEEK_ROW, COLUMNS.kind, "column");
  const kinds = Object.entries(KIND_LOOKS);
  return [
    ...PHASES.map((phase): ConditionalFormat => {
      const { fill, text } = PHASE_COLOURS[phase];
      return { range: lifts, kind: "textIs", text: phase, look: { fill, colour: text } };
    }),
    ...around.flatMap((range) =>
      kinds.map(([name, look]): ConditionalFormat => ({
        range,
        kind: "formula",
        formula: `=${kind}="${name}"`,
        look,
      })),
    ),
  ];
}

/** The demo roster: invented lifters as rows, and the worksheet functions at work beside them. */
import { RECOVERIES, ROOMS, SEXES } from "../../engine";
import { rangeRef } from "./cell-ref";
import { SHORT_CAUTION } from "./caution-text";
import { daySerial, dayText } from "./day-text";
import { DEMO_FIELDS, DEMO_LIFTERS, GYM, SPRING_MEET, type DemoField } from "./demo-lifters";
import { ROSTER_HEADINGS } from "./field-text";
import { BASE_LOOKS } from "./looks";
import type { Cell, CellRange, SheetModel, Validation } from "./model";

const HEAD_ROW = 3;
const FIRST_ROW = HEAD_ROW + 1;
/** Characters. */
const WIDTHS: Readonly<Record<DemoField, number>> = {
  lifter: 21,
  sex: 9,
  bodyweightKg: 12,
  classLimitKg: 10,
  trainingYears: 10,
  squatKg: 9,
  benchKg: 9,
  deadliftKg: 10,
  recovery: 11,
  roomInClass: 10,
  explosive: 10,
  startDate: 17,
  meetDate: 17,
};
const GAP_WIDTH = 3;

/** The range of a roster that the functions read: its headings and all its rows. */
export const DEMO_RANGE: CellRange = {
  row: HEAD_ROW,
  column: 0,
  rows: DEMO_LIFTERS.length + 1,
  columns: DEMO_FIELDS.length,
};

/** Each function fills as many columns as it has heads, one row a lifter. */
const FUNCTIONS = [
  { name: "LEVEL", heads: ["Level"], widths: [15] },
  { name: "HARDWEEKS", heads: ["Hard weeks"], widths: [8] },
  {
    name: "PHASEWEEKS",
    heads: ["Hypertrophy weeks", "Strength weeks", "Peaking weeks"],
    widths: [12, 10, 10],
  },
  { name: "CHECK", heads: ["Check"], widths: [50] },
] as const;

export function demoRosterSheet(): SheetModel {
  const width = DEMO_FIELDS.length + 1 + FUNCTIONS.reduce((sum, { heads }) => sum + heads.length, 0);
  const across = (row: number): CellRange => ({ row, column: 0, rows: 1, columns: DEMO_FIELDS.length });
  return {
    name: "Roster",
    columns: [
      ...DEMO_FIELDS.map((field) => ({ width: WIDTHS[field] })),
      { width: GAP_WIDTH },
      ...FUNCTIONS.flatMap(({ widths }) => widths.map((each) => ({ width: each }))),
    ],
    rowHeights: { 0: 26, 1: 20, 2: 20, [HEAD_ROW]: 34 },
    cells: [
      { row: 0, column: 0, value: `${GYM}: spring meet, ${dayText(SPRING_MEET)}`, style: "title" },
      { row: 1, column: 0, value: INTRODUCTION, style: "faint" },
      { row: 2, column: 0, value: SHORT_CAUTION, style: "pointer" },
      ...DEMO_FIELDS.map((field, column) => ({
        row: HEAD_ROW,
        column,
        value: ROSTER_HEADINGS[field],
        style: "head",
      })),
      ...lifterCells(),
      ...functionCells(),
    ],
    styles: BASE_LOOKS,
    merges: [across(0), across(1), across(2)],
    freeze: { rows: HEAD_ROW + 1, columns: 1 },
    names: [],
    validations: validations(),
    conditionalFormats: [],
    notes: [],
    print: {
      orientation: "landscape",
      fitWidth: true,
      repeatRows: [HEAD_ROW, HEAD_ROW],
      area: { row: 0, column: 0, rows: FIRST_ROW + DEMO_LIFTERS.length, columns: width },
      footer: "&L&A&RPage &P of &N",
    },
  };
}

const INTRODUCTION =
  "Invented lifters. Change any framed cell and the columns on the right follow: one formula each, over all rows.";

const STYLES: Readonly<Partial<Record<DemoField, string>>> = {
  lifter: "inputText",
  sex: "inputWord",
  recovery: "inputWord",
  roomInClass: "inputWord",
  explosive: "inputWord",
  startDate: "inputDate",
  meetDate: "inputDate",
};

function lifterCells(): Cell[] {
  return DEMO_LIFTERS.flatMap((lifter, index) =>
    DEMO_FIELDS.map((field, column): Cell => {
      const cell = { row: FIRST_ROW + index, column, style: STYLES[field] ?? "inputNumber" };
      const given = lifter[field];
      if (given === null) return cell;
      const isDate = field === "startDate" || field === "meetDate";
      return { ...cell, value: isDate ? daySerial(String(given)) : given };
    }),
  );
}

function functionCells(): Cell[] {
  const cells: Cell[] = [];
  let column = DEMO_FIELDS.length + 1;
  for (const { name, heads } of FUNCTIONS) {
    heads.forEach((value, index) =>
      cells.push({ row: HEAD_ROW, column: column + index, value, style: "head" }),
    );
    const formula = `=MEETWARD.${name}(${rangeRef(DEMO_RANGE)})`;
    const style = name === "PHASEWEEKS" || name === "HARDWEEKS" ? "result" : "resultText";
    // The rows below stay without a value: a function's results spill into them.
    for (const { row, column: under } of cellsOf({
      row: FIRST_ROW,
      column,
      rows: DEMO_LIFTERS.length,
      columns: heads.length,
    })) {
      const isFirst = row === FIRST_ROW && under === column;
      cells.push(isFirst ? { row, column, formula, style } : { row, column: under, style });
    }
    column += heads.length;
  }
  return cells;
}

function cellsOf({ row, column, rows, columns }: CellRange): { row: number; column: number }[] {
  return Array.from({ length: rows * columns }, (_, index) => ({
    row: row + Math.floor(index / columns),
    column: column + (index % columns),
  }));
}

function validations(): Validation[] {
  const column = (field: DemoField): CellRange => ({
    row: FIRST_ROW,
    column: DEMO_FIELDS.indexOf(field),
    rows: DEMO_LIFTERS.length,
    columns: 1,
  });
  const list = (field: DemoField, values: readonly string[]): Validation => ({
    kind: "list",
    range: column(field),
    values,
    message: `Allowed: ${values.join(", ")}.`,
  });
  const date = (field: DemoField): Validation => ({
    kind: "date",
    range: column(field),
    min: daySerial("2000-01-01"),
    max: daySerial("2099-12-31"),
    message: "A date is wanted here.",
  });
  return [
    list("sex", SEXES),
    list("recovery", RECOVERIES),
    list("roomInClass", ROOMS),
    list("explosive", ["yes", "no"]),
    date("startDate"),
    date("meetDate"),
  ];
}

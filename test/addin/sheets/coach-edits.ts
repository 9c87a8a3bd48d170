/** A coach's edits of a week grid, with what must follow from each, worked out by hand. */
import { COLUMNS, FIRST_WEEK_ROW, MEET_DAY, WEEK_START } from "../../../addin/sheets/grid-layout";
import type { CellValue, SheetModel } from "../../../addin/sheets/model";
import { planSheets } from "../../../addin/sheets";
import { daySerial } from "../../../addin/sheets/words";
import { planLifter, type Planned } from "../../../engine";
import { LIFTER_NAMES, LIFTERS, smallMan } from "../../lifters";

const planned = (request: object): Planned => {
  const answer = planLifter(request);
  if (answer.status !== "planned") throw new Error(JSON.stringify(answer));
  return answer;
};
export const small = planned(smallMan);
export const meetWeek = small.plan.weeks.length;

interface Edit {
  readonly row: number;
  readonly column: number;
  /** Null to empty the cell. */
  readonly value: CellValue | null;
}

const inWeek = (week: number, column: keyof typeof COLUMNS, value: CellValue | null): Edit => ({
  row: FIRST_WEEK_ROW + week - 1,
  column: COLUMNS[column],
  value,
});

export const PLANNED = LIFTER_NAMES.flatMap((name) => {
  const answer = planLifter(LIFTERS[name]);
  return answer.status === "planned" ? [{ name, answer }] : [];
});

/** The plan edited here: 5+1, 5+1, 3+meet over 16 weeks, hypertrophy to week 6, strength to week 12. */
export const EDITS: Readonly<
  Record<string, { readonly edits: readonly Edit[]; readonly says: Readonly<Record<number, string>> }>
> = {
  "peaks early": {
    edits: [inWeek(3, "squat", "peaking")],
    says: {
      3: "Lifts two phases apart.",
      4: "Squat goes back a phase.",
    },
  },
  "goes back": {
    edits: [inWeek(10, "bench", "hypertrophy"), inWeek(14, "deadlift", "strength")],
    says: { 10: "Bench goes back a phase.", 14: "Deadlift goes back a phase." },
  },
  "no deload": {
    edits: [inWeek(6, "kind", "hard")],
    says: Object.fromEntries([7, 8, 9, 10, 11].map((week) => [week, "More than 6 hard weeks in a row."])),
  },
  "meet not peaking": {
    edits: [
      inWeek(meetWeek, "squat", "strength"),
      inWeek(meetWeek - 1, "squat", "strength"),
      inWeek(meetWeek - 2, "squat", "strength"),
      inWeek(meetWeek - 3, "squat", "strength"),
    ],
    says: { [meetWeek]: "Meet week: not every lift is in peaking." },
  },
  "no meet week": {
    edits: [inWeek(meetWeek, "kind", "hard")],
    says: { [meetWeek]: "The last week is not meet week." },
  },
  "meet too soon": {
    edits: [inWeek(meetWeek - 1, "kind", "meet")],
    says: { [meetWeek - 1]: "Meet week is not the last week." },
  },
  "no phase": {
    edits: [inWeek(2, "bench", null)],
    says: { 2: "A lift has no phase." },
  },
  "late bridge": {
    edits: [inWeek(8, "kind", "bridge")],
    says: { 8: "A bridge week inside the preparation." },
  },
};
export const MOVES: Readonly<
  Record<string, { readonly edits: readonly Edit[]; readonly meetWeekStart: string }>
> = {
  "meet later": {
    edits: [{ ...MEET_DAY, value: daySerial("2027-05-29") }],
    meetWeekStart: "2027-05-24",
  },
  "meet on sunday": {
    edits: [{ ...MEET_DAY, value: daySerial("2027-05-16") }],
    meetWeekStart: "2027-05-10",
  },
  "meet on monday": {
    edits: [{ ...MEET_DAY, value: daySerial("2027-05-17") }],
    meetWeekStart: "2027-05-17",
  },
  "saturday weeks": {
    edits: [{ ...WEEK_START, value: "Saturday" }],
    meetWeekStart: "2027-05-15",
  },
  "sunday weeks": {
    edits: [{ ...WEEK_START, value: "Sunday" }],
    meetWeekStart: "2027-05-09",
  },
};

function edited(name: string, answer: Planned, edits: readonly Edit[]): SheetModel {
  const model = planSheets(answer, [])[0]!;
  const cells = model.cells.map((cell) => {
    const edit = edits.find(({ row, column }) => row === cell.row && column === cell.column);
    if (!edit) return cell;
    const { row, column, style } = cell;
    return edit.value === null ? { row, column, style } : { row, column, style, value: edit.value };
  });
  return { ...model, name, cells: cells.map((cell) => ({ ...cell, style: cell.style! })) };
}

/** Every lifter's plan as it is, then the edited ones, one sheet each, named as above. */
export const EDITED_SHEETS: readonly SheetModel[] = [
  ...PLANNED.map(({ name, answer }) => edited(name, answer, [])),
  ...Object.entries({ ...EDITS, ...MOVES }).map(([name, { edits }]) => edited(name, small, edits)),
];

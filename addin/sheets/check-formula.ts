/** The check beside each week: plain formulas that say in words what an edit has broken. */
import { LIFTS, LIMITS, PHASES } from "../../engine";
import { cellRef, rangeRef } from "./cell-ref";
import { capitalised } from "./count-text";
import { acrossRow, COLUMNS, FIRST_LIFT_COLUMN, liftColumn } from "./grid-layout";

const MOST_HARD = LIMITS.hardWeeks.max;
const [HYPERTROPHY, STRENGTH, PEAKING] = PHASES;

export const CHECK_WORDS = {
  apart: "Lifts two phases apart.",
  backOf: (lift: string): string => `${capitalised(lift)} goes back a phase.`,
  noPhase: "A lift has no phase.",
  meetNotPeaking: "Meet week: not every lift is in peaking.",
  notLast: "Meet week is not the last week.",
  noMeet: "The last week is not meet week.",
  tooManyHard: `More than ${MOST_HARD} hard weeks in a row.`,
  lateBridge: "A bridge week inside the preparation.",
} as const;

/**
 * The formula of one week's check: "" when nothing is wrong, else one sentence after another.
 * The row must have at least as many rows above it as a mesocycle may have hard weeks.
 */
export function checkFormula(row: number): string {
  const kind = cellRef(row, COLUMNS.kind);
  const kindAbove = cellRef(row - 1, COLUMNS.kind);
  const phases = rangeRef(acrossRow(row, FIRST_LIFT_COLUMN, FIRST_LIFT_COLUMN + LIFTS.length - 1));
  const lately = rangeRef({ row: row - MOST_HARD, column: COLUMNS.kind, rows: MOST_HARD + 1, columns: 1 });
  const toMeet = cellRef(row, COLUMNS.toMeet);
  const has = (phase: string) => `COUNTIF(${phases},"${phase}")`;
  const goesBack = (column: number): string => {
    const now = cellRef(row, column);
    const above = cellRef(row - 1, column);
    return `OR(AND(${now}="${HYPERTROPHY}",OR(${above}="${STRENGTH}",${above}="${PEAKING}")),AND(${now}="${STRENGTH}",${above}="${PEAKING}"))`;
  };
  const held = `(${PHASES.map(has).join("+")})`;
  const checks: readonly (readonly [condition: string, words: string])[] = [
    [`AND(${has(HYPERTROPHY)}>0,${has(PEAKING)}>0)`, CHECK_WORDS.apart],
    ...LIFTS.map((lift) => [goesBack(liftColumn(lift)), CHECK_WORDS.backOf(lift)] as const),
    [`AND(${kind}<>"bridge",${kind}<>"meet",${held}<${LIFTS.length})`, CHECK_WORDS.noPhase],
    [`AND(${kind}="meet",${has(PEAKING)}<${LIFTS.length})`, CHECK_WORDS.meetNotPeaking],
    [`AND(${kind}="meet",${toMeet}>0)`, CHECK_WORDS.notLast],
    [`AND(${kind}<>"meet",${toMeet}=0)`, CHECK_WORDS.noMeet],
    [`COUNTIF(${lately},"hard")>${MOST_HARD}`, CHECK_WORDS.tooManyHard],
    [`AND(${kind}="bridge",OR(${kindAbove}="hard",${kindAbove}="deload"))`, CHECK_WORDS.lateBridge],
  ];
  const said = checks.map(([condition, words]) => `IF(${condition},"${words} ","")`);
  return `=TRIM(${said.join("&")})`;
}

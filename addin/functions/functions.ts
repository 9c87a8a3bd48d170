/**
 * The worksheet functions, namespace MEETWARD. What stands here is read by a tool that knows syntax only: plain
 * exported functions, ranges as any[][], a rectangle back. Each result has one row a lifter; a row that cannot be
 * read says why in its first cell and leaves its neighbours alone.
 */
import { assessHardWeeks, assessLevel, assessPrepWeeks } from "./assess";
import { checkRows } from "./check";
import { tellPhaseOn } from "./phase-on";
import { countPhaseWeeks } from "./phase-weeks";
import { listWeeks } from "./week-grid";

/* eslint-disable @typescript-eslint/no-explicit-any -- the metadata tool refuses narrower ranges. */

/**
 * The level of each lifter: beginner, intermediate, advanced or very advanced.
 * @customfunction LEVEL
 * @param rows One lifter a row, with or without the heading row above.
 * @param [headings] The headings, when they stand elsewhere. Without any, columns are in the standard order.
 * @returns One cell a lifter.
 */
export function level(rows: any[][], headings?: any[][]): any[][] {
  return assessLevel(rows, headings);
}

/**
 * The hard weeks before each deload, 2 to 6, for each lifter.
 * @customfunction HARDWEEKS
 * @param rows One lifter a row, with or without the heading row above.
 * @param [headings] The headings, when they stand elsewhere. Without any, columns are in the standard order.
 * @returns One cell a lifter.
 */
export function hardWeeks(rows: any[][], headings?: any[][]): any[][] {
  return assessHardWeeks(rows, headings);
}

/**
 * The weeks of directed preparation for each lifter: the least and the most of good use, and those planned.
 * @customfunction PREPWEEKS
 * @param rows One lifter a row, with or without the heading row above.
 * @param [headings] The headings, when they stand elsewhere. Without any, columns are in the standard order.
 * @returns Three cells a lifter: least, most, planned.
 */
export function prepWeeks(rows: any[][], headings?: any[][]): any[][] {
  return assessPrepWeeks(rows, headings);
}

/**
 * The weeks of hypertrophy, strength and peaking that one lift has, for each lifter.
 * @customfunction PHASEWEEKS
 * @param rows One lifter a row, with or without the heading row above.
 * @param [lift] squat, bench or deadlift; squat when left out.
 * @param [headings] The headings, when they stand elsewhere. Without any, columns are in the standard order.
 * @returns Three cells a lifter: hypertrophy, strength, peaking.
 */
export function phaseWeeks(rows: any[][], lift?: string, headings?: any[][]): any[][] {
  return countPhaseWeeks(rows, lift, headings);
}

/**
 * The phase one lift is in on a day, for each lifter; "bridge" before directed preparation begins.
 * @customfunction PHASEON
 * @param rows One lifter a row, with or without the heading row above.
 * @param day One day for all, or a column with one day a row.
 * @param [lift] squat, bench or deadlift; squat when left out.
 * @param [headings] The headings, when they stand elsewhere. Without any, columns are in the standard order.
 * @returns One cell a lifter.
 */
export function phaseOn(rows: any[][], day: any[][], lift?: string, headings?: any[][]): any[][] {
  return tellPhaseOn(rows, day, lift, headings);
}

/**
 * One lifter's weeks: number, first day, weeks to the meet, mesocycle, kind and the phase of each lift.
 * @customfunction WEEKGRID
 * @param row One lifter's row, with or without the heading row above.
 * @param [headings] The headings, when they stand elsewhere. Without any, columns are in the standard order.
 * @returns One row a week, below a row of headings.
 */
export function weekGrid(row: any[][], headings?: any[][]): any[][] {
  return listWeeks(row, headings);
}

/**
 * What is wrong with each lifter's row, in words; nothing when all is well.
 * @customfunction CHECK
 * @param rows One lifter a row, with or without the heading row above.
 * @param [headings] The headings, when they stand elsewhere. Without any, columns are in the standard order.
 * @returns One cell a lifter.
 */
export function check(rows: any[][], headings?: any[][]): any[][] {
  return checkRows(rows, headings);
}

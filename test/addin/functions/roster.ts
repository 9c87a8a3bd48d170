/** Rosters as the cells a host hands over. */
import { REQUEST_FIELDS } from "../../../engine/index";
import { LIFTERS, type RawRequest } from "../../lifters/index";

export type Cells = unknown[][];

/** Excel's serial number of an ISO day, by the platform's UTC calendar. */
export const serial = (day: string): number => Date.parse(`${day}T00:00:00Z`) / 86400000 + 25569;

const isDayField = (field: string) => field === "startDate" || field === "meetDate";

/** A lifter's row in the standard order, dates as serial numbers, blanks as "". */
export function toCells(request: RawRequest): unknown[] {
  return REQUEST_FIELDS.map((field) => {
    const value = request[field] ?? "";
    return isDayField(field) && typeof value === "string" && value !== "" ? serial(value) : value;
  });
}

export const HEADINGS_ROW = [
  "Lifter",
  "Sex",
  "Bodyweight (kg)",
  "Class limit (kg)",
  "Training years",
  "Squat (kg)",
  "Bench (kg)",
  "Deadlift (kg)",
  "Recovery",
  "Room in class",
  "Explosive",
  "Start date",
  "Meet date",
  "Level",
  "Hard weeks",
  "Prep weeks",
  "Unit",
  "Week start",
  "Arrangement",
];

/** The fixture lifters, without headings. */
export const ROWS: Cells = Object.values(LIFTERS).map(toCells);
export const REQUESTS: readonly RawRequest[] = Object.values(LIFTERS);

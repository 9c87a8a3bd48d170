/** The request's fields in a coach's words. */
import type { RequestField } from "../../engine";
import { capitalised } from "./count-text";

/** A field's name without its unit, which follows the figures. */
export const FIELD_NAMES: Readonly<Record<RequestField, string>> = {
  lifter: "Lifter",
  sex: "Sex",
  bodyweightKg: "Bodyweight",
  classLimitKg: "Class limit",
  trainingYears: "Training years",
  squatKg: "Squat",
  benchKg: "Bench",
  deadliftKg: "Deadlift",
  recovery: "Recovery",
  roomInClass: "Room in class",
  explosive: "Explosive",
  startDate: "Start date",
  meetDate: "Meet date",
  level: "Level",
  hardWeeks: "Hard weeks",
  prepWeeks: "Preparation weeks",
  unit: "Unit",
  weekStart: "Week starts on",
  arrangement: "Lifts change phase",
};

/** A roster's column headings. */
export const ROSTER_HEADINGS: Readonly<Record<RequestField, string>> = {
  ...FIELD_NAMES,
  bodyweightKg: "Bodyweight kg",
  classLimitKg: "Class limit kg",
  squatKg: "Squat kg",
  benchKg: "Bench kg",
  deadliftKg: "Deadlift kg",
};

const PIN_LISTS: Readonly<Record<string, string>> = {
  mesocycles: "pinned mesocycle",
  phaseWeeks: "pinned phase length",
  weekPhases: "pinned phase",
  weekKinds: "pinned week",
};
const PIN_KEYS: Readonly<Record<string, string>> = {
  number: "its number",
  hardWeeks: "its hard weeks",
  lift: "its lift",
  phase: "its phase",
  weeks: "its weeks",
  weeksToMeet: "its weeks to the meet",
  kind: "its kind",
};

/** A problem's path in words: "Bodyweight", "Pinned week 2, its kind". Unknown keys stay as they were given. */
export function fieldText(path: string): string {
  if (path === "") return "Lifter's data";
  if (path === "mesocycleTolerance") return "Weeks a mesocycle may be off";
  if (Object.hasOwn(FIELD_NAMES, path)) return FIELD_NAMES[path as RequestField];
  const [head, list, index, key] = path.split(".");
  if (head !== "pins") return path;
  if (list === undefined) return "Pins";
  const named = Object.hasOwn(PIN_LISTS, list) ? PIN_LISTS[list]! : list;
  if (index === undefined) return `${capitalised(named)}s`;
  const one = `${capitalised(named)} ${Number(index) + 1}`;
  return key === undefined ? one : `${one}, ${Object.hasOwn(PIN_KEYS, key) ? PIN_KEYS[key]! : key}`;
}

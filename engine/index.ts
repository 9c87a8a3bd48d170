/** The door of the engine: exports, nothing else. */
export { planLifter, type Asked } from "./plan";
export { REQUEST_FIELDS } from "./request";
export type { ClassChoice, PlanRequest, RequestField } from "./request";
export type { MesocyclePin, PhaseWeeksPin, Pins, WeekKindPin, WeekPhasePin } from "./pins";
export type * from "./answer";
export type * from "./outcome";
export { PROBLEM_CODES, assert } from "./outcome";
export type * from "./why";
export { STANDINGS } from "./rules/sources";
export type { RuleRow, Sourced, Standing } from "./rules/sources";
export { LIMITS } from "./rules/limits";
export { DELOAD_SURVEY, SEX_AND_FATIGUE } from "./rules/counter-weights";
export { addDays, daysBetween, isDay, weekdayOf } from "./calendar/day";
export type { Day } from "./calendar/day";
export { WEEKDAYS, startOfWeek } from "./calendar/week";
export type { Weekday } from "./calendar/week";
export { KG_PER_LB, kgFromLb, lbFromKg } from "./units";
export * from "./words";

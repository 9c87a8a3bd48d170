/** Eight invented lifters of an invented gym, one for each interesting case. */
import type { CellValue } from "./model";

export const GYM = "Harbour Street Barbell";
export const SPRING_MEET = "2027-05-15";

/** What each roster column holds, in the order of DEMO_FIELDS; null where it is blank. */
export type DemoLifter = Readonly<Record<DemoField, CellValue | null>>;

export const DEMO_FIELDS = [
  "lifter",
  "sex",
  "bodyweightKg",
  "classLimitKg",
  "trainingYears",
  "squatKg",
  "benchKg",
  "deadliftKg",
  "recovery",
  "roomInClass",
  "explosive",
  "startDate",
  "meetDate",
] as const;
export type DemoField = (typeof DEMO_FIELDS)[number];

const lifter = (...values: readonly (CellValue | null)[]): DemoLifter =>
  Object.fromEntries(DEMO_FIELDS.map((field, index) => [field, values[index]!])) as DemoLifter;

// prettier-ignore
export const DEMO_LIFTERS: readonly DemoLifter[] = [
  // Two hard weeks: extremely strong, explosive, and a job that wears him down.
  lifter("Bram Tolliver", "male", 118, 120, 13, 345, 215, 360, "low", "none", "yes", "2027-02-22", SPRING_MEET),
  // Three hard weeks, and a heavy man's long peak.
  lifter("Osric Hale", "male", 131, null, 15, 340, 222.5, 345, "normal", "none", "no", "2027-03-01", SPRING_MEET),
  lifter("Ines Varga", "female", 68.4, 69, 7, 160, 92.5, 180, "normal", "some", "no", "2027-02-08", SPRING_MEET),
  lifter("Teo Lindqvist", "male", 65.2, 66, 3.5, 150, 97.5, 185, "normal", "some", "no", "2027-01-25", SPRING_MEET),
  lifter("Caleb Rowntree", "male", 81, null, 1.5, 120, 82.5, 150, "normal", "plenty", "no", "2027-01-18", SPRING_MEET),
  // Six hard weeks: brand new, a light class.
  lifter("Mina Okafor-Reyes", "female", 51.3, 52, 0.5, 52.5, 30, 70, "normal", "plenty", "no", "2027-01-04", SPRING_MEET),
  // No plan fits: the meet is three weeks off.
  lifter("Petra Sandoval", "female", 74, 76, 4, 130, 75, 155, "normal", "some", "no", "2027-04-26", SPRING_MEET),
  // A meet far away: bridge weeks before the directed preparation.
  lifter("Joren Ashby", "male", 91.5, 93, 6, 215, 142.5, 245, "high", "some", "no", "2027-01-04", "2027-06-26"),
];

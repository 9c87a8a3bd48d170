/**
 * Invented lifters as raw requests, used by every test that needs somebody: one for each kind of case.
 * Masses in kg, days as yyyy-mm-dd.
 */

/** A request as it comes in, before anything is checked. */
export type RawRequest = Readonly<Record<string, string | number>>;

/** Very advanced, heavy, explosive, low recovery: the fewest hard weeks there are. */
export const tiredGiant: RawRequest = {
  lifter: "Bram Tolliver",
  sex: "male",
  bodyweightKg: 118,
  classLimitKg: 120,
  trainingYears: 13,
  squatKg: 345,
  benchKg: 215,
  deadliftKg: 360,
  recovery: "low",
  roomInClass: "none",
  explosive: "yes",
  startDate: "2027-02-22",
  meetDate: "2027-05-15",
};

/** Very advanced and heavy, with ordinary recovery. */
export const heavyMan: RawRequest = {
  lifter: "Osric Hale",
  sex: "male",
  bodyweightKg: 131,
  trainingYears: 15,
  squatKg: 340,
  benchKg: 222.5,
  deadliftKg: 345,
  recovery: "normal",
  roomInClass: "none",
  explosive: "no",
  startDate: "2027-03-01",
  meetDate: "2027-05-15",
};

/** An advanced woman in a middle class. */
export const middleweightWoman: RawRequest = {
  lifter: "Ines Varga",
  sex: "female",
  bodyweightKg: 68.4,
  classLimitKg: 69,
  trainingYears: 7,
  squatKg: 160,
  benchKg: 92.5,
  deadliftKg: 180,
  recovery: "normal",
  roomInClass: "some",
  explosive: "no",
  startDate: "2027-02-08",
  meetDate: "2027-05-15",
};

/** An intermediate man in a light class. */
export const smallMan: RawRequest = {
  lifter: "Teo Lindqvist",
  sex: "male",
  bodyweightKg: 65.2,
  classLimitKg: 66,
  trainingYears: 3.5,
  squatKg: 150,
  benchKg: 97.5,
  deadliftKg: 185,
  recovery: "normal",
  roomInClass: "some",
  explosive: "no",
  startDate: "2027-01-25",
  meetDate: "2027-05-15",
};

/** An ordinary beginner. */
export const beginnerMan: RawRequest = {
  lifter: "Caleb Rowntree",
  sex: "male",
  bodyweightKg: 81,
  trainingYears: 1.5,
  squatKg: 120,
  benchKg: 82.5,
  deadliftKg: 150,
  recovery: "normal",
  roomInClass: "plenty",
  explosive: "no",
  startDate: "2027-01-18",
  meetDate: "2027-05-15",
};

/** Brand new, in a light class: the most hard weeks there are. */
export const newLightWoman: RawRequest = {
  lifter: "Mina Okafor-Reyes",
  sex: "female",
  bodyweightKg: 51.3,
  classLimitKg: 52,
  trainingYears: 0.5,
  squatKg: 52.5,
  benchKg: 30,
  deadliftKg: 70,
  recovery: "normal",
  roomInClass: "plenty",
  explosive: "no",
  startDate: "2027-01-04",
  meetDate: "2027-05-15",
};

/** Three weeks to the meet: nothing fits. */
export const lateStarter: RawRequest = {
  lifter: "Petra Sandoval",
  sex: "female",
  bodyweightKg: 74,
  classLimitKg: 76,
  trainingYears: 4,
  squatKg: 130,
  benchKg: 75,
  deadliftKg: 155,
  recovery: "normal",
  roomInClass: "some",
  explosive: "no",
  startDate: "2027-04-26",
  meetDate: "2027-05-15",
};

/** Half a year to the meet: bridge weeks come first. */
export const longHorizon: RawRequest = {
  lifter: "Joren Ashby",
  sex: "male",
  bodyweightKg: 91.5,
  classLimitKg: 93,
  trainingYears: 6,
  squatKg: 215,
  benchKg: 142.5,
  deadliftKg: 245,
  recovery: "high",
  roomInClass: "some",
  explosive: "no",
  startDate: "2027-01-04",
  meetDate: "2027-06-26",
};

export const LIFTERS = {
  tiredGiant,
  heavyMan,
  middleweightWoman,
  smallMan,
  beginnerMan,
  newLightWoman,
  lateStarter,
  longHorizon,
} as const satisfies Record<string, RawRequest>;

export type LifterName = keyof typeof LIFTERS;
export const LIFTER_NAMES = Object.keys(LIFTERS) as readonly LifterName[];

/** One example at least of everything that wants words: decisions, costs, cautions, problems, rule rows. */
import { planLifter, type Answer, type Caution, type ProblemCode, type RuleRow } from "../../../engine";
import * as classes from "../../../engine/rules/classes";
import * as exposures from "../../../engine/rules/exposures";
import * as hardWeeks from "../../../engine/rules/hard-weeks";
import * as levels from "../../../engine/rules/levels";
import * as limits from "../../../engine/rules/limits";
import * as model from "../../../engine/rules/model";
import * as percentiles from "../../../engine/rules/percentiles";
import * as phases from "../../../engine/rules/phases";
import * as points from "../../../engine/rules/points";
import * as preparation from "../../../engine/rules/preparation";
import { beginnerMan, LIFTERS, longHorizon, smallMan } from "../../lifters";

const ROOMS = [
  classes,
  exposures,
  hardWeeks,
  levels,
  limits,
  model,
  percentiles,
  phases,
  points,
  preparation,
] as const;

/** Every rule row in the engine's tables, however deep. */
export const RULE_ROWS: readonly RuleRow[] = rowsIn(ROOMS.map((room) => Object.values(room)));

function rowsIn(value: unknown): RuleRow[] {
  if (typeof value !== "object" || value === null) return [];
  const here = "id" in value && "standing" in value ? [value as RuleRow] : [];
  return [...here, ...Object.values(value).flatMap(rowsIn)];
}

const REQUESTS: readonly object[] = [
  ...Object.values(LIFTERS),
  { ...smallMan, squatKg: "", level: "advanced", hardWeeks: 3, prepWeeks: 12, classLimitKg: 74 },
  { ...smallMan, squatKg: "", benchKg: "" },
  { ...beginnerMan, arrangement: "together" },
  { ...beginnerMan, arrangement: "spread" },
  { ...longHorizon, prepWeeks: 20, weekStart: "saturday" },
  ...[8, 9, 10, 11, 12, 13].flatMap((weeks) =>
    Object.values(LIFTERS).map((lifter) => ({
      ...lifter,
      ...startingBefore(weeks),
    })),
  ),
];

/** A start so many weeks before a meet on Saturday 15 May 2027. */
function startingBefore(weeks: number): { startDate: string; meetDate: string } {
  const starts = ["2027-02-15", "2027-02-22", "2027-03-01", "2027-03-08", "2027-03-15", "2027-03-22"];
  return { startDate: starts[13 - weeks]!, meetDate: "2027-05-15" };
}

const ANSWERS: readonly Answer[] = REQUESTS.map((request) => planLifter(request));
const READ = ANSWERS.flatMap((answer) => (answer.status === "invalid" ? [] : [answer]));
const PLANNED = READ.flatMap((answer) => (answer.status === "planned" ? [answer] : []));

export const DECISIONS_SEEN = READ.flatMap((answer) => answer.decisions);

export const COSTS_SEEN = PLANNED.flatMap(({ plan, runnersUp }) => [
  ...plan.costs,
  ...runnersUp.flatMap(({ plan: other, gains, givesUp }) => [...other.costs, ...gains, ...givesUp]),
]);

/** One caution of every code: a code without one does not compile. */
export const caution: { readonly [C in Caution["code"]]: readonly Extract<Caution, { code: C }>[] } = {
  training: [{ code: "training" }],
  federation: [
    { code: "federation", tableFrom: null },
    { code: "federation", tableFrom: "2021-01-01" },
  ],
  blankBests: [{ code: "blankBests", missing: ["squat", "deadlift"] }],
  overridden: [
    { code: "overridden", field: "level", set: "advanced", assessed: "intermediate" },
    { code: "overridden", field: "classLimitKg", set: "93", assessed: "83" },
    { code: "overridden", field: "prepWeeks", set: "12", assessed: "9–16" },
    { code: "overridden", field: "hardWeeks", set: "3", assessed: "4" },
  ],
  shortPreparation: [{ code: "shortPreparation", weeks: 6, least: 8 }],
  longPreparation: [{ code: "longPreparation", weeks: 26, most: 24 }],
  unusedWeek: [
    { code: "unusedWeek", weeks: 1 },
    { code: "unusedWeek", weeks: 2 },
  ],
  longBridge: [{ code: "longBridge", weeks: 10, hardWeeks: 4 }],
  partialFirstWeek: [
    { code: "partialFirstWeek", days: 1 },
    { code: "partialFirstWeek", days: 3 },
  ],
  shortMeetWeek: [
    { code: "shortMeetWeek", days: 0 },
    { code: "shortMeetWeek", days: 1 },
    { code: "shortMeetWeek", days: 2 },
  ],
  outsideUsual: [
    { code: "outsideUsual", lift: "bench", phase: "peaking", weeks: 5, low: 2, high: 2 },
    { code: "outsideUsual", lift: "squat", phase: "hypertrophy", weeks: 3, low: 4.333333, high: 6 },
  ],
  pinBreaksRule: [{ code: "pinBreaksRule", rule: model.M5 }],
};

/** For every code an input that has it, and its words, written out by hand. */
export const PROBLEM_EXAMPLES: Readonly<Record<ProblemCode, readonly [unknown, string]>> = {
  missing: [{ ...beginnerMan, sex: "" }, "Sex: blank; allowed: female or male."],
  notANumber: [
    { ...beginnerMan, bodyweightKg: "abc" },
    'Bodyweight: given "abc"; allowed: a number from 25 to 300 kg.',
  ],
  decimalComma: [
    { ...beginnerMan, bodyweightKg: "82,5" },
    'Bodyweight: given "82,5", with a comma for the decimals; allowed: a number from 25 to 300 kg. Write 82.5.',
  ],
  outOfRange: [
    { ...beginnerMan, trainingYears: -2 },
    "Training years: given -2; allowed: a number from 0 to 80 years.",
  ],
  notWhole: [
    { ...beginnerMan, hardWeeks: 3.5 },
    "Hard weeks: given 3.5, which is not whole; allowed: a whole number from 2 to 6 weeks.",
  ],
  notOneOf: [{ ...beginnerMan, recovery: "so-so" }, 'Recovery: given "so-so"; allowed: low, normal or high.'],
  notText: [
    { ...beginnerMan, lifter: ["Ada"] },
    "Lifter: given a list, which is not text; allowed: text of up to 100 characters.",
  ],
  notADay: [
    { ...beginnerMan, meetDate: "15/5/27" },
    'Meet date: given "15/5/27", which is not a date; allowed: a date, as yyyy-mm-dd such as 2027-05-15.',
  ],
  noSuchDay: [
    { ...beginnerMan, startDate: "2027-02-30" },
    'Start date: given "2027-02-30", a date that does not exist; allowed: a date, as yyyy-mm-dd such as 2027-05-15.',
  ],
  meetBeforeStart: [
    { ...beginnerMan, startDate: "2027-05-22" },
    "Meet date: given Sat 15 May 2027, before the start; allowed: a date from Sat 22 May 2027 to Sat 18 May 2030.",
  ],
  meetTooFar: [
    { ...beginnerMan, startDate: "2027-05-22", meetDate: "2031-01-01" },
    "Meet date: given Wed 1 Jan 2031, too far ahead; allowed: a date from Sat 22 May 2027 to Sat 18 May 2030.",
  ],
  classBelowBodyweight: [
    { ...beginnerMan, classLimitKg: 74 },
    "Class limit: given 74, below the bodyweight; allowed: a limit of 81 kg or more, or blank.",
  ],
  tooLong: [
    { ...beginnerMan, lifter: "n".repeat(300) },
    `Lifter: given "${"n".repeat(39)}…", which is long and is cut where it does not fit; allowed: text of up to 100 characters.`,
  ],
  formulaSign: [
    { ...beginnerMan, lifter: "=HYPERLINK(A1)" },
    'Lifter: given "=HYPERLINK(A1)", which begins like a formula; it is written as text.',
  ],
  unusual: [
    { ...beginnerMan, squatKg: 1200 },
    "Squat: given 1200, beyond nearly every result; look again. Usual: a number from 1 to 450 kg.",
  ],
  unusualShare: [
    { ...beginnerMan, benchKg: 20 },
    "Bench: given 20, an unusual share of the total; look again at all three lifts. Usual: a number from 14 to 55 % of the total.",
  ],
  unknownField: [
    { ...beginnerMan, Sex: "male" },
    "Sex: not a field that is known here, so it is left out; known: Lifter, Sex, Bodyweight, Class limit, Training years, Squat, Bench, Deadlift, Recovery, Room in class, Explosive, Start date, Meet date, Level, Hard weeks, Preparation weeks, Unit, Week starts on, Lifts change phase, Weeks a mesocycle may be off and Pins. Meant: Sex?",
  ],
  notAnObject: [[1, 2], "Lifter's data: given a list; allowed: one lifter's fields, each with its value."],
};

/** Why a number is what it is, in a coach's English: one entry per decision. */
import { LIFTS, type Decision, type Standing } from "../../engine";
import {
  classWords,
  hardWeeksWords,
  levelWords,
  prepRangeWords,
  sizeWords,
  strengthWords,
} from "./assessment-text";
import { capitalised, countText, weeksText } from "./count-text";
import { costMoreText, costText } from "./cost-text";
import { dayText } from "./day-text";
import { rhythmText, splitText } from "./plan-text";
import { ruleText } from "./rule-text";

export interface Worded {
  /** What was decided: "Level". */
  readonly about: string;
  /** What it came to: "advanced". */
  readonly value: string;
  readonly because: readonly string[];
  readonly rejected: readonly string[];
}

export interface DecisionText extends Worded {
  /** "Level: advanced" */
  readonly title: string;
  /** The rules it rests on, each with what it says and where it comes from. */
  readonly sources: readonly { readonly standing: Standing; readonly from: string; readonly rule: string }[];
}

export function decisionText(decision: Decision): DecisionText {
  const words = wordsOf(decision);
  const sources = decision.rules.map((rule) => ({
    standing: rule.standing,
    from: rule.from,
    rule: ruleText(rule),
  }));
  return { ...words, title: `${words.about}: ${words.value}`, sources };
}

function wordsOf(decision: Decision): Worded {
  switch (decision.about) {
    case "class":
      return classWords(decision);
    case "size":
      return sizeWords(decision);
    case "strength":
      return strengthWords(decision);
    case "level":
      return levelWords(decision);
    case "hardWeeks":
      return hardWeeksWords(decision);
    case "prepRange":
      return prepRangeWords(decision);
    case "prepWeeks":
      return prepWeeksWords(decision);
    case "mesocycles":
      return mesocyclesWords(decision);
    case "phaseTargets":
      return phaseTargetsWords(decision);
    case "phaseWeeks":
      return phaseWeeksWords(decision);
    case "calendar":
      return calendarWords(decision);
  }
}

type About<A extends Decision["about"]> = Extract<Decision, { about: A }>;

function prepWeeksWords({ value, given, rejected }: About<"prepWeeks">): Worded {
  const { available, bridge, set } = given;
  const rest =
    bridge === 0 ? "all of them directed." : `the first ${weeksText(bridge)} a bridge of general training.`;
  return {
    about: "Directed preparation",
    value: weeksText(value),
    because: [
      ...(set ? ["Set by the coach."] : []),
      `${weeksText(available)} from the first training week to meet week, both counted: ${rest}`,
    ],
    rejected: rejected.map(
      ({ weeks, costMore }) =>
        `${weeksText(weeks)}: ${costMore === null ? "no plan" : costMoreText(costMore)}`,
    ),
  };
}

const ARRANGED = {
  together: "The lifts change phase together.",
  "as needed": "Each lift changes phase as it needs.",
  spread: "Each lift follows its own targets first.",
} as const;

function mesocyclesWords({ value, given, rejected }: About<"mesocycles">): Worded {
  const isRhythmKept = value.every((hardWeeks) => hardWeeks === given.hardWeeks);
  return {
    about: "Mesocycles",
    value: rhythmText(value),
    because: [
      `The lifter's own rhythm is ${countText(given.hardWeeks, "hard week")} and a deload; in the last one the taper into meet week stands for it.`,
      ...(isRhythmKept ? ["Every mesocycle keeps it."] : []),
      ...given.costs.map((item) => `${costText(item)}.`),
      ARRANGED[given.arrangement],
    ],
    rejected: rejected.map(
      ({ hardWeeks, costMore }) => `${rhythmText(hardWeeks)}: ${costMoreText(costMore)}`,
    ),
  };
}

function phaseTargetsWords({ value, given }: About<"phaseTargets">): Worded {
  const room = { none: "no room", some: "some room", plenty: "plenty of room" }[given.roomInClass];
  return {
    about: "Phase targets",
    value: `for ${weeksText(given.directedWeeks)}`,
    because: [
      ...LIFTS.map((lift) => `${capitalised(lift)}: ${splitText(value[lift])} (weeks).`),
      `For this level (${given.level}), size (${given.size}) and ${room} in the class, scaled to the length of this preparation.`,
    ],
    rejected: [],
  };
}

function phaseWeeksWords({ value, given, rejected }: About<"phaseWeeks">): Worded {
  const costs = given.costs.map((item) => `${costText(item)}.`);
  return {
    about: capitalised(given.lift),
    value: splitText(value),
    because: [
      `Target: ${splitText(given.target)} (weeks).`,
      ...(costs.length > 0 ? costs : ["Nothing stands against it."]),
    ],
    rejected: rejected.map(({ weeks, costMore }) => `${splitText(weeks)}: ${costMoreText(costMore)}`),
  };
}

function calendarWords({ value, given }: About<"calendar">): Worded {
  return {
    about: "Meet week",
    value: `from ${dayText(value)}`,
    because: [
      `Weeks start on ${capitalised(given.weekStart)} and are counted back from the meet on ${dayText(given.meetDate)}.`,
      `Training starts on ${dayText(given.startDate)}.`,
    ],
    rejected: [],
  };
}

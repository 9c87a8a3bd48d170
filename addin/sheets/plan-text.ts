/** A plan in words: its rhythm, its split and the whole in two lines. */
import { LIFTS, PHASES, type PhaseWeeks, type Plan, type Planned } from "../../engine";
import { capitalised, countText, listText, numberText, weeksText } from "./count-text";
import { dayText } from "./day-text";

/** "4+1, 4+1, 3+meet": hard weeks and the easy week that ends each mesocycle. */
export function rhythmText(hardWeeks: readonly number[]): string {
  return hardWeeks
    .map((hard, index) => `${hard}+${index === hardWeeks.length - 1 ? "meet" : "1"}`)
    .join(", ");
}

/** "5 hypertrophy, 5 strength, 4 peaking": weeks of each phase, those without a week left out. */
export function splitText(weeks: PhaseWeeks): string {
  const held = PHASES.filter((phase) => weeks[phase] > 0);
  return held.map((phase) => `${numberText(weeks[phase])} ${phase}`).join(", ");
}

const isSameSplit = (a: PhaseWeeks, b: PhaseWeeks): boolean => PHASES.every((phase) => a[phase] === b[phase]);

/** Each lift's weeks, or one split where all share it. */
export function splitsText({ lifts }: Plan): string {
  if (LIFTS.every((lift) => isSameSplit(lifts[lift], lifts.squat)))
    return `all lifts ${splitText(lifts.squat)}`;
  return LIFTS.map((lift) => `${lift} ${splitText(lifts[lift])}`).join("; ");
}

/** The preparation and its rhythm; the split per lift and the dates. */
export function planInWords({ plan }: Pick<Planned, "plan">): [string, string] {
  const hardWeeks = plan.mesocycles.map((mesocycle) => mesocycle.hardWeeks);
  const parts = [
    ...(plan.bridgeWeeks > 0 ? [countText(plan.bridgeWeeks, "bridge week")] : []),
    `${weeksText(plan.directedWeeks)} of directed preparation`,
  ];
  const mesocycles = countText(hardWeeks.length, "mesocycle");
  const first = plan.weeks[0]!.startDate;
  const directed = plan.mesocycles[0]!.startDate;
  const from =
    plan.bridgeWeeks > 0 ? `${dayText(first)}, directed from ${dayText(directed)}` : dayText(first);
  return [
    `${capitalised(listText(parts))} in ${mesocycles}: ${rhythmText(hardWeeks)} (hard weeks + deload).`,
    `Weeks: ${splitsText(plan)}. From the week of ${from}; meet on ${dayText(plan.meetDate)}.`,
  ];
}

/**
 * Checks a plan against the rules M1 to M7, and counts its cost, from the model's text alone: all it reads of a plan is
 * the list of weeks, each with its kind and the phase of every lift.
 */
import type { Plan, PlanWeek } from "../../../engine/answer";
import { COSTS, M1, M3, M4, SPREAD } from "../../../engine/rules/model";
import { LIFTS, PHASES, type Lift } from "../../../engine/words";
import type { Instance } from "./instance";

export interface Breach {
  readonly rule: "M1" | "M2" | "M3" | "M4" | "M5" | "M6" | "M7" | "order";
  readonly what: string;
}

const directedOf = (plan: Pick<Plan, "weeks">): readonly PlanWeek[] =>
  plan.weeks.filter((week) => week.kind !== "bridge");

/** Hard weeks of each mesocycle: runs of hard weeks up to a deload or meet week. */
export function hardWeeksOf(plan: Pick<Plan, "weeks">): number[] {
  const runs: number[] = [];
  let hard = 0;
  for (const week of directedOf(plan)) {
    if (week.kind === "hard") hard++;
    else {
      runs.push(hard);
      hard = 0;
    }
  }
  return hard > 0 ? [...runs, hard] : runs;
}

/** Weeks of hypertrophy, strength and peaking of a lift. */
function phaseWeeksOf(plan: Pick<Plan, "weeks">, lift: Lift): readonly [number, number, number] {
  const [h, s, p] = PHASES.map(
    (phase) => directedOf(plan).filter((week) => week.phase?.[lift] === phase).length,
  );
  return [h!, s!, p!];
}

/** Every rule the plan breaks, as often as it breaks it. */
export function findBreaches(instance: Instance, plan: Pick<Plan, "weeks">, most: number): readonly Breach[] {
  const found: Breach[] = [];
  const hold = (rule: Breach["rule"], held: boolean, what: string): void =>
    void (held || found.push({ rule, what }));
  const directed = directedOf(plan);
  const W = directed.length;

  const firstDirected = plan.weeks.findIndex((week) => week.kind !== "bridge");
  plan.weeks.forEach((week, index) => {
    hold("order", week.week === index + 1, `week ${week.week} stands at ${index + 1}`);
    hold(
      "order",
      week.weeksToMeet === plan.weeks.length - 1 - index,
      `weeks to the meet in week ${week.week}`,
    );
    hold("order", (week.kind === "bridge") === index < firstDirected, `a bridge inside: week ${week.week}`);
    hold("order", (week.kind === "meet") === (index === plan.weeks.length - 1), `meet week ${week.week}`);
    hold(
      "M7",
      (week.phase === null) === (week.kind === "bridge"),
      `one week for all lifts: week ${week.week}`,
    );
  });

  if (directed.some((week) => week.phase === null)) return found;

  const runs = hardWeeksOf(plan);
  runs.forEach((hard, index) => {
    const isFinal = index === runs.length - 1;
    hold("M1", hard >= M1.min && hard <= M1.max, `${hard} hard weeks`);
    const isClose =
      hard <= instance.hardWeeks + instance.tolerance &&
      (isFinal || hard >= instance.hardWeeks - instance.tolerance);
    hold("M1", isClose, `${hard} hard weeks for a lifter of ${instance.hardWeeks}`);
  });
  hold("M2", W <= most, `${W} weeks of at most ${most}`);
  hold("M2", W <= instance.available, `${W} weeks of ${instance.available}`);

  for (const lift of LIFTS) {
    const [h, s, p] = phaseWeeksOf(plan, lift);
    hold("M3", h === 0 || (h >= M3.hypertrophy.min && h <= M3.hypertrophy.max), `${lift} hypertrophy ${h}`);
    hold("M3", s >= M3.strength.min && s <= M3.strength.max, `${lift} strength ${s}`);
    hold("M3", p >= instance.leastPeaking && p <= M3.peaking.max, `${lift} peaking ${p}`);
    const share = (weeks: number, least: number, mostPct: number): boolean =>
      weeks >= Math.floor((least * W) / 100) && weeks <= Math.ceil((mostPct * W) / 100);
    const strengthMost =
      instance.isVeryAdvanced && h === 0
        ? M4.strength.maxPctVeryAdvancedWithoutHypertrophy
        : M4.strength.maxPct;
    const peakingMost =
      instance.isVeryAdvanced && instance.isHeavyMan
        ? M4.peaking.maxPctVeryAdvancedHeavyMan
        : M4.peaking.maxPct;
    hold("M4", share(h, M4.hypertrophy.minPct, M4.hypertrophy.maxPct), `${lift} hypertrophy ${h} of ${W}`);
    hold("M4", share(s, M4.strength.minPct, strengthMost), `${lift} strength ${s} of ${W}`);
    hold("M4", share(p, M4.peaking.minPct, peakingMost), `${lift} peaking ${p} of ${W}`);
    directed.forEach((week, index) => {
      const before = directed[index - 1]?.phase?.[lift];
      const goesOn = !before || PHASES.indexOf(before) <= PHASES.indexOf(week.phase![lift]);
      hold("order", goesOn, `${lift} goes back in week ${week.week}`);
      const isOwnDeload = week.kind !== "deload" || before === week.phase![lift];
      hold("order", isOwnDeload, `${lift}: the deload of week ${week.week} is not of the phase it ends`);
    });
  }
  for (const week of directed) {
    const steps = LIFTS.map((lift) => PHASES.indexOf(week.phase![lift]));
    hold("M5", Math.max(...steps) - Math.min(...steps) <= 1, `two phases apart in week ${week.week}`);
  }
  for (const lift of LIFTS)
    hold("M6", directed.at(-1)?.phase?.[lift] === "peaking", `${lift} does not peak at the meet`);
  return found;
}

/** What the plan costs, counted week by week. */
export function countCost(instance: Instance, plan: Pick<Plan, "weeks">): number {
  const directed = directedOf(plan);
  const W = directed.length;
  let cost = Math.max(0, instance.usable - W) * COSTS.unusedWeek.weight;
  const runs = hardWeeksOf(plan);
  runs.forEach((hard, index) => {
    const isShortFinal = index === runs.length - 1 && hard < instance.hardWeeks;
    cost +=
      Math.abs(hard - instance.hardWeeks) * (isShortFinal ? COSTS.rhythm.weight / 2 : COSTS.rhythm.weight);
    if (index > 0) cost += Math.max(0, hard - runs[index - 1]!) * COSTS.longerThanBefore.weight;
  });
  for (const lift of LIFTS) {
    const numbers = instance.lifts[lift];
    const weeks = phaseWeeksOf(plan, lift);
    weeks.forEach((each, phase) => {
      const at = (row: readonly [number, number, number]): number => (row[phase]! * W) / 12;
      const away = Math.abs(each - at(numbers.target));
      const outside = Math.max(0, at(numbers.low) - each, each - at(numbers.high));
      cost += away * COSTS.target.weight * (instance.arrangement === "spread" ? SPREAD.factor : 1);
      cost += outside * COSTS.outside.weight;
    });
    cost += numbers.missing(weeks[2]) * COSTS.exposure.weight;
    directed.forEach((week, index) => {
      const before = directed[index - 1];
      if (before && before.phase![lift] !== week.phase![lift] && before.kind !== "deload")
        cost += COSTS.changeInside.weight;
    });
  }
  return cost;
}

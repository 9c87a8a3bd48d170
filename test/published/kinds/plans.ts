/** Published figures about whole plans, compared over a sweep of lifters. */
import { planLifter, type Planned } from "../../../engine/index";
import { LEVELS, LIFTS, RECOVERIES, ROOMS, SEXES, SIZES } from "../../../engine/words";
import type { Level, Lift, Phase, Recovery, RoomInClass, Sex, Size } from "../../../engine/words";
import type { Comparison, Finding } from "./kind";

interface Swept {
  readonly level: Level;
  readonly sex: Sex;
  readonly size: Size;
  readonly room: RoomInClass;
  readonly recovery: Recovery;
  readonly explosive: boolean;
}

/** A class of each size, kg. */
const CLASSES: Readonly<Record<Sex, Readonly<Record<Size, number>>>> = {
  male: { light: 66, middle: 83, heavy: 120 },
  female: { light: 52, middle: 63, heavy: 84 },
};
/** Some years of training for each level, so that the level set is no override against the years. */
const YEARS: Readonly<Record<Level, number>> = {
  beginner: 1,
  intermediate: 3,
  advanced: 7,
  "very advanced": 12,
};

/** The plan of every swept lifter for twelve weeks: Monday 2027-01-04 to the meet on Saturday 2027-03-27. */
let swept: ReadonlyMap<Swept, Planned | null> | null = null;
function sweep(): ReadonlyMap<Swept, Planned | null> {
  if (swept) return swept;
  const plans = new Map<Swept, Planned | null>();
  for (const level of LEVELS)
    for (const sex of SEXES)
      for (const size of SIZES)
        for (const room of ROOMS)
          for (const recovery of RECOVERIES)
            for (const explosive of [false, true]) {
              const lifter = { level, sex, size, room, recovery, explosive };
              plans.set(lifter, planFor(lifter));
            }
  swept = plans;
  return plans;
}

function planFor({ level, sex, size, room, recovery, explosive }: Swept): Planned | null {
  const answer = planLifter({
    sex,
    bodyweightKg: CLASSES[sex][size] - 0.5,
    trainingYears: YEARS[level],
    recovery,
    roomInClass: room,
    explosive,
    startDate: "2027-01-04",
    meetDate: "2027-03-27",
    level,
    prepWeeks: 12,
  });
  if (answer.status === "invalid")
    throw new Error(`The sweep asks wrongly: ${JSON.stringify(answer.problems)}`);
  return answer.status === "planned" ? answer : null;
}

const nameOf = (lifter: Swept, hardWeeks: number): string =>
  `${lifter.level} ${lifter.sex} ${lifter.size}, room ${lifter.room}, ${hardWeeks} hard weeks`;

/** One finding for each place, however many lifters of the sweep lead to it. */
function merge(findings: readonly Finding[]): readonly Finding[] {
  return [...new Map(findings.map((finding) => [finding.at, finding])).values()];
}

interface TradeRange {
  readonly level: Level;
  readonly sexes: readonly Sex[];
  readonly sizes: readonly Size[];
  readonly rooms: readonly RoomInClass[];
  readonly phase: Phase;
  readonly weeks: readonly [number, number];
  /** Weeks by which a lift may leave the range, since lifts differ from the squat. */
  readonly slack: Readonly<Record<Lift, number>>;
}

/** The weeks of a phase in every twelve-week plan of one kind of lifter, against the customary range. */
export function compareTradeRange(range: TradeRange): Comparison {
  let compared = 0;
  const findings: Finding[] = [];
  for (const [lifter, answer] of sweep()) {
    if (lifter.level !== range.level || !range.sexes.includes(lifter.sex)) continue;
    if (!range.sizes.includes(lifter.size) || !range.rooms.includes(lifter.room)) continue;
    for (const lift of LIFTS) {
      compared++;
      if (answer === null || answer.plan.directedWeeks !== 12) {
        findings.push({ at: `${nameOf(lifter, 0)}: no plan`, printed: range.weeks, ours: answer });
        continue;
      }
      const weeks = answer.plan.lifts[lift][range.phase];
      const slack = range.slack[lift];
      if (weeks >= range.weeks[0] - slack && weeks <= range.weeks[1] + slack) continue;
      const at = `${nameOf(lifter, answer.assessment.hardWeeks)}: ${lift} ${weeks}`;
      findings.push({ at, printed: range.weeks, ours: weeks });
    }
  }
  return { compared, findings: merge(findings) };
}

interface Survey {
  readonly figure: "interval" | "length";
  readonly mean: number;
  readonly sd: number;
}

/** Every deload of the sweep against the survey's mean plus or minus one standard deviation. */
export function compareDeloads({ figure, mean, sd }: Survey): Comparison {
  let compared = 0;
  const findings: Finding[] = [];
  for (const [lifter, answer] of sweep()) {
    if (answer === null) continue;
    const directed = answer.plan.weeks.filter((week) => week.kind !== "bridge");
    let sinceDeload = 0;
    directed.forEach((week, index) => {
      sinceDeload++;
      if (week.kind !== "deload") return;
      const days = directed[index - 1]?.kind === "deload" ? 14 : 7;
      const ours = figure === "interval" ? sinceDeload : days;
      compared++;
      sinceDeload = 0;
      if (Math.abs(ours - mean) <= sd) return;
      const at = `${lifter.level} ${lifter.sex} ${lifter.size}, ${answer.assessment.hardWeeks} hard weeks: ${ours}`;
      findings.push({ at, printed: [mean - sd, mean + sd], ours });
    });
  }
  return { compared, findings: merge(findings) };
}

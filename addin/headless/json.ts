/** An answer as plain JSON: the same keys for every lifter, null or an empty list where an answer has nothing. */
import type {
  Answer,
  Day,
  Decision,
  Kind,
  Level,
  PerLift,
  Phase,
  PhaseWeeks,
  Plan,
  RuleRow,
  Size,
  Standing,
} from "../../engine/index";
import type { RowAnswer } from "../read/answer-row";
import { cautionText, decisionText, nearestText, ruleText, runnerUpText } from "../sheets/words";
import { tellProblems, type ProblemJson } from "./problems";

export interface LifterJson {
  readonly status: Answer["status"];
  /** The row in a roster, its heading row counted; the place in a list of requests; 1 for a single request. */
  readonly row: number;
  readonly lifter: string | null;
  /** Null when the row could not be read. */
  readonly assessment: AssessmentJson | null;
  readonly mesocycles: readonly MesocycleJson[];
  readonly lifts: PerLift<PhaseWeeks> | null;
  readonly weeks: readonly WeekJson[];
  readonly runnersUp: readonly RunnerUpJson[];
  readonly decisions: readonly DecisionJson[];
  readonly cautions: readonly { readonly code: string; readonly text: string }[];
  /** Each message names the row as well. */
  readonly problems: readonly ProblemJson[];
  /** Only where no plan fits. */
  readonly nearest: NearestJson | null;
}

interface AssessmentJson {
  readonly level: Level;
  readonly size: Size;
  readonly hardWeeks: number;
  /** `planned` is null where no plan fits. */
  readonly prepWeeks: { readonly least: number; readonly most: number; readonly planned: number | null };
  readonly className: string;
  readonly percentile: number | null;
  readonly dots: number | null;
  readonly totalKg: number | null;
}

interface MesocycleJson {
  readonly hardWeeks: number;
  readonly weeks: number;
  readonly startDate: Day;
}

interface WeekJson {
  readonly week: number;
  readonly startDate: Day;
  readonly weeksToMeet: number;
  readonly kind: Kind;
  /** Null in a bridge week. */
  readonly phase: PerLift<Phase> | null;
}

interface PlanJson {
  readonly mesocycles: readonly MesocycleJson[];
  readonly lifts: PerLift<PhaseWeeks>;
  readonly weeks: readonly WeekJson[];
}

interface RunnerUpJson extends Omit<PlanJson, "weeks"> {
  readonly text: string;
  readonly costMore: number;
  readonly gains: readonly string[];
  readonly givesUp: readonly string[];
}

interface DecisionJson {
  readonly about: string;
  readonly value: unknown;
  readonly text: string;
  readonly because: readonly string[];
  readonly rejected: readonly string[];
  readonly rules: readonly (RuleJson & { readonly standing: Standing; readonly from: string })[];
}

interface NearestJson {
  readonly earliestMeetDate: Day | null;
  readonly latestStartDate: Day | null;
  readonly binding: readonly RuleJson[];
  /** The plan that bends the fewest rules. */
  readonly plan: (PlanJson & { readonly breaks: readonly RuleJson[] }) | null;
  readonly text: readonly string[];
}

interface RuleJson {
  readonly id: string;
  readonly text: string;
}

export function toJson(answered: RowAnswer): LifterJson {
  const { row, lifter, answer } = answered;
  const told = tellProblems(answered);
  const problems = told.map((problem) => ({ ...problem, message: `Row ${row}: ${problem.message}` }));
  const planned = answer.status === "planned" ? answer : null;
  const assessed = answer.status === "invalid" ? null : answer;
  return {
    status: answer.status,
    row,
    lifter,
    assessment: assessed && assessmentJson(assessed),
    ...(planned ? planJson(planned.plan) : { mesocycles: [], lifts: null, weeks: [] }),
    runnersUp: planned ? runnersUpJson(planned) : [],
    decisions: (assessed?.decisions ?? []).map(decisionJson),
    cautions: (assessed?.cautions ?? []).map((caution) => ({
      code: caution.code,
      text: cautionText(caution),
    })),
    problems,
    nearest: answer.status === "doesNotFit" ? nearestJson(answer) : null,
  };
}

function decisionJson(decision: Decision): DecisionJson {
  const { title, because, rejected } = decisionText(decision);
  const rules = decision.rules.map((rule) => ({
    ...ruleJson(rule),
    standing: rule.standing,
    from: rule.from,
  }));
  return { about: decision.about, value: decision.value, text: title, because, rejected, rules };
}

const ruleJson = (rule: RuleRow): RuleJson => ({ id: rule.id, text: ruleText(rule) });

type Of<Status extends Answer["status"]> = Extract<Answer, { status: Status }>;

function assessmentJson(answer: Of<"planned" | "doesNotFit">): AssessmentJson {
  const { level, size, hardWeeks, prepRange, className, percentile, dots, totalKg } = answer.assessment;
  const planned = answer.status === "planned" ? answer.plan.directedWeeks : null;
  return {
    level,
    size,
    hardWeeks,
    prepWeeks: { ...prepRange, planned },
    className,
    percentile,
    dots,
    totalKg,
  };
}

function planJson({ mesocycles, lifts, weeks }: Plan): PlanJson {
  return {
    mesocycles: mesocycles.map(({ hardWeeks, weeks: count, startDate }) => ({
      hardWeeks,
      weeks: count,
      startDate,
    })),
    lifts,
    weeks: weeks.map(({ week, startDate, weeksToMeet, kind, phase }) => ({
      week,
      startDate,
      weeksToMeet,
      kind,
      phase,
    })),
  };
}

function runnersUpJson({ runnersUp, plan }: Of<"planned">): RunnerUpJson[] {
  return runnersUp.map((runnerUp) => {
    const { title, gains, givesUp } = runnerUpText(runnerUp, plan);
    const { mesocycles, lifts } = planJson(runnerUp.plan);
    return { text: title, costMore: runnerUp.costMore, gains, givesUp, mesocycles, lifts };
  });
}

function nearestJson(answer: Of<"doesNotFit">): NearestJson {
  const { earliestMeetDate, latestStartDate, plan } = answer.nearest;
  return {
    earliestMeetDate,
    latestStartDate,
    binding: answer.binding.map(ruleJson),
    plan: plan && { ...planJson(plan.plan), breaks: plan.breaks.map(ruleJson) },
    text: nearestText(answer),
  };
}

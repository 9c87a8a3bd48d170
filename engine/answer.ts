/** What the engine answers for one lifter: planned, does not fit, or invalid. */
import type { Day } from "./calendar/day";
import type { Problem } from "./outcome";
import type { PlanRequest } from "./request";
import type { RuleRow } from "./rules/sources";
import type { Caution, CostItem, Decision, PhaseWeeks } from "./why";
import type { Kind, Level, PerLift, Phase, Size } from "./words";

export interface Assessment {
  /** Class by name, such as "74" or "84+". */
  readonly className: string;
  readonly size: Size;
  readonly level: Level;
  /** Percentile (1–99) of the lifter's DOTS among open meet results of the same sex; null without three bests. */
  readonly percentile: number | null;
  readonly dots: number | null;
  readonly totalKg: number | null;
  readonly hardWeeks: number;
  /** Weeks of directed preparation this lifter can make good use of. */
  readonly prepRange: { readonly least: number; readonly most: number };
}

export interface Mesocycle {
  /** 1 for the first of the directed preparation. */
  readonly number: number;
  readonly hardWeeks: number;
  /** hardWeeks + 1: the deload, or meet week in the final one. */
  readonly weeks: number;
  readonly startDate: Day;
}

export interface PlanWeek {
  /** 1 for the first training week. */
  readonly week: number;
  readonly startDate: Day;
  /** 0 in meet week. */
  readonly weeksToMeet: number;
  readonly kind: Kind;
  /** Null in a bridge week. */
  readonly mesocycle: number | null;
  /** Null in a bridge week. */
  readonly phase: PerLift<Phase> | null;
}

export interface Plan {
  readonly meetDate: Day;
  readonly bridgeWeeks: number;
  /** Weeks of directed preparation, meet week included. */
  readonly directedWeeks: number;
  readonly mesocycles: readonly Mesocycle[];
  readonly lifts: PerLift<PhaseWeeks>;
  readonly weeks: readonly PlanWeek[];
  readonly costs: readonly CostItem[];
  readonly cost: number;
}

/** Another plan with a different mesocycle pattern, and what sets it apart. */
export interface RunnerUp {
  readonly plan: Plan;
  readonly costMore: number;
  /** Costs it saves against the plan chosen, by rule. */
  readonly gains: readonly CostItem[];
  /** Costs it adds against the plan chosen, by rule. */
  readonly givesUp: readonly CostItem[];
}

export interface NearestPlan {
  readonly plan: Plan;
  readonly breaks: readonly RuleRow[];
}

export interface Nearest {
  /** The first meet day that fits with the same start day. */
  readonly earliestMeetDate: Day | null;
  /** The last start day that fits with the same meet day. */
  readonly latestStartDate: Day | null;
  /** The plan that bends the fewest rules, and which. */
  readonly plan: NearestPlan | null;
}

interface Answered {
  readonly request: PlanRequest;
  readonly assessment: Assessment;
  readonly decisions: readonly Decision[];
  readonly cautions: readonly Caution[];
  /** Questioned input only: nothing that stops the plan. */
  readonly problems: readonly Problem[];
}

export interface Planned extends Answered {
  readonly status: "planned";
  readonly plan: Plan;
  readonly runnersUp: readonly RunnerUp[];
}

export interface DoesNotFit extends Answered {
  readonly status: "doesNotFit";
  /** The rules that cannot all hold in the weeks there are. */
  readonly binding: readonly RuleRow[];
  readonly nearest: Nearest;
}

export interface Invalid {
  readonly status: "invalid";
  readonly problems: readonly Problem[];
}

export type Answer = Planned | DoesNotFit | Invalid;

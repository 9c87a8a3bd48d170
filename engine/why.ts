/** Why a number is what it is, as data: what was chosen, by which rule rows, from what, and what was passed over. */
import type { Day } from "./calendar/day";
import type { Weekday } from "./calendar/week";
import type { RuleRow } from "./rules/sources";
import type { Arrangement, Level, Lift, PerLift, Phase, Recovery, RoomInClass, Sex, Size } from "./words";

export interface PhaseWeeks {
  readonly hypertrophy: number;
  readonly strength: number;
  readonly peaking: number;
}

/** One line of an itemised sum, in tenths of a week. */
export interface SumItem {
  readonly rule: RuleRow;
  readonly tenths: number;
}

/** One line of a plan's cost: how much of what, at which weight. */
export interface CostItem {
  readonly rule: RuleRow;
  readonly lift: Lift | null;
  readonly weeks: number;
  readonly cost: number;
}

interface Chosen<About extends string, Value, Given, Rejected = never> {
  readonly about: About;
  readonly value: Value;
  readonly rules: readonly RuleRow[];
  readonly given: Given;
  readonly rejected: readonly Rejected[];
}

export type Decision =
  | Chosen<
      "class",
      string,
      { readonly bodyweightKg: number; readonly sex: Sex; readonly set: boolean },
      string
    >
  | Chosen<"size", Size, { readonly className: string; readonly sex: Sex }, Size>
  | Chosen<
      "strength",
      number | null,
      {
        readonly totalKg: number | null;
        readonly dots: number | null;
        readonly missing: readonly Lift[];
        readonly sex: Sex;
      }
    >
  | Chosen<
      "level",
      Level,
      {
        readonly byStrength: Level | null;
        readonly byYears: Level;
        readonly trainingYears: number;
        readonly set: boolean;
      },
      Level
    >
  | Chosen<
      "hardWeeks",
      number,
      {
        readonly sumTenths: number;
        readonly items: readonly SumItem[];
        readonly recovery: Recovery;
        readonly set: boolean;
        /** What the assessment alone gives. */
        readonly assessed: number;
      },
      number
    >
  | Chosen<
      "prepRange",
      { readonly least: number; readonly most: number },
      { readonly level: Level; readonly size: Size; readonly roomInClass: RoomInClass }
    >
  | Chosen<
      "prepWeeks",
      number,
      { readonly available: number; readonly bridge: number; readonly set: boolean },
      { readonly weeks: number; readonly costMore: number | null }
    >
  | Chosen<
      "mesocycles",
      readonly number[],
      { readonly hardWeeks: number; readonly arrangement: Arrangement; readonly costs: readonly CostItem[] },
      { readonly hardWeeks: readonly number[]; readonly costMore: number }
    >
  | Chosen<
      "phaseTargets",
      PerLift<PhaseWeeks>,
      {
        readonly directedWeeks: number;
        readonly level: Level;
        readonly size: Size;
        readonly roomInClass: RoomInClass;
      }
    >
  | Chosen<
      "phaseWeeks",
      PhaseWeeks,
      { readonly lift: Lift; readonly target: PhaseWeeks; readonly costs: readonly CostItem[] },
      { readonly weeks: PhaseWeeks; readonly costMore: number }
    >
  | Chosen<"calendar", Day, { readonly startDate: Day; readonly meetDate: Day; readonly weekStart: Weekday }>;

/** What a coach should know beside the plan. Codes with their figures; the words are the add-in's. */
export type Caution =
  | { readonly code: "training" }
  | { readonly code: "federation"; readonly tableFrom: Day | null }
  | { readonly code: "blankBests"; readonly missing: readonly Lift[] }
  | {
      readonly code: "overridden";
      readonly field: "level" | "hardWeeks" | "prepWeeks" | "classLimitKg";
      readonly set: string;
      readonly assessed: string;
    }
  | { readonly code: "shortPreparation"; readonly weeks: number; readonly least: number }
  | { readonly code: "longPreparation"; readonly weeks: number; readonly most: number }
  | { readonly code: "unusedWeek"; readonly weeks: number }
  | { readonly code: "longBridge"; readonly weeks: number; readonly hardWeeks: number }
  | { readonly code: "partialFirstWeek"; readonly days: number }
  | { readonly code: "shortMeetWeek"; readonly days: number }
  | {
      readonly code: "outsideUsual";
      readonly lift: Lift;
      readonly phase: Phase;
      readonly weeks: number;
      readonly low: number;
      readonly high: number;
    }
  | { readonly code: "pinBreaksRule"; readonly rule: RuleRow };

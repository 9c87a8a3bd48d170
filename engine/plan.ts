/**
 * The spine: a lifter and a meet day in, a plan out. Every stage takes what it needs and returns a new value;
 * no stage calls another.
 */
import type { Answer, Assessment, DoesNotFit, Nearest, Plan, Planned } from "./answer";
import { placeInClass } from "./assessment/place-in-class";
import { rangePreparation } from "./assessment/range-preparation";
import { rateStrength } from "./assessment/rate-strength";
import { setLevel } from "./assessment/set-level";
import { sumHardWeeks } from "./assessment/sum-hard-weeks";
import { classTableOn } from "./assessment/weight-class";
import { countWeeks, type Calendar } from "./calendar/count-weeks";
import { cautionPlan, cautionRequest } from "./caution-plan";
import {
  bendPreparation,
  choosePreparations,
  findBinding,
  rulesOf,
  type WeeksAsked,
} from "./choose-preparation";
import { compareCosts } from "./compare-costs";
import { explainPreparation } from "./explain-preparation";
import { findNearest } from "./find-nearest";
import { needExposures } from "./phases/need-exposures";
import { setTargets, type Lifter } from "./phases/set-targets";
import { relaxedByPins } from "./pins";
import type { Preparation, Terms } from "./preparation";
import { parseRequest, type PlanRequest } from "./request";
import { RUNNERS_UP, type ModelRuleId } from "./rules/model";
import { layWeeks } from "./weeks/lay-weeks";
import type { Decision } from "./why";
import { perLift } from "./words";

export interface Asked {
  /** 0 for the best plan; 1, 2, … to put that runner-up in its place, with its own reasons and cautions. */
  readonly choice?: number;
  /** The plan alone, without runners-up and without the decisions that led to it: for many rows at a time. */
  readonly brief?: boolean;
}

/**
 * Plans one lifter's preparation.
 * @param input a plain object with the keys of REQUEST_FIELDS, and `pins`; see request.ts.
 * @param asked which plan and how much beside it; the best plan with everything when left out
 * @returns planned, doesNotFit or invalid. Never throws for bad input; throws only for a fault of ours.
 */
export function planLifter(input: unknown, { choice = 0, brief = false }: Asked = {}): Answer {
  const parsed = parseRequest(input);
  if (!parsed.ok) return { status: "invalid", problems: parsed.problems };
  const request = parsed.value;

  const placed = placeInClass(request.sex, request.bodyweightKg, request.classChoice, request.meetDate);
  const rated = rateStrength(request.sex, request.bodyweightKg, request.bestsKg);
  const levelled = setLevel(request.trainingYears, rated.percentile, request.level);
  const lifter: Lifter = {
    level: levelled.level,
    size: placed.size,
    sex: request.sex,
    roomInClass: request.roomInClass,
  };
  const rhythm = sumHardWeeks({ ...request, ...lifter }, request.hardWeeks);
  const range = rangePreparation(lifter.level, lifter.size, lifter.roomInClass);
  const calendar = countWeeks(request.startDate, request.meetDate, request.weekStart);

  const assessment: Assessment = {
    className: placed.className,
    size: placed.size,
    level: levelled.level,
    percentile: rated.percentile,
    dots: rated.dots,
    totalKg: rated.totalKg,
    hardWeeks: rhythm.hardWeeks,
    prepRange: { least: range.least, most: range.most },
  };
  const terms: Terms = {
    lifter,
    hardWeeks: rhythm.hardWeeks,
    tolerance: request.mesocycleTolerance,
    arrangement: request.arrangement,
    targets: setTargets(lifter),
    exposures: perLift((lift) => needExposures(lifter, lift)),
    pins: request.pins,
    usableWeeks: request.prepWeeks ?? Math.min(calendar.available, range.most),
    givenUp: new Set(),
  };
  const weeks: WeeksAsked = {
    available: calendar.available,
    least: range.least,
    most: range.most,
    set: request.prepWeeks,
  };
  const decisions = [
    ...placed.decisions,
    ...rated.decisions,
    ...levelled.decisions,
    ...rhythm.decisions,
    ...range.decisions,
  ];
  const cautions = cautionRequest(request, assessment, {
    level: levelled.assessed,
    hardWeeks: rhythm.assessed,
    tableClassName: placed.tableClassName,
    missing: rated.missing,
    classTableFrom: classTableOn(request.sex, request.meetDate).validFrom,
  });
  const answered = { request, assessment, decisions, cautions, problems: parsed.problems };

  const found = choosePreparations(terms, weeks, brief ? 1 : 1 + RUNNERS_UP.count);
  if (found.length > 0)
    return toPlanned(answered, terms, weeks, calendar, putFirst(found, choice), [], brief);
  const bent = bendPreparation(terms, weeks, relaxedByPins(request.pins));
  if (bent) return toPlanned(answered, terms, weeks, calendar, [bent.preparation], bent.breaks, brief);
  return toDoesNotFit(answered, terms, weeks, calendar);
}

function putFirst<T>(items: readonly T[], index: number): readonly T[] {
  const chosen = items[index];
  return chosen === undefined ? items : [chosen, ...items.filter((item) => item !== chosen)];
}

type Answered = Omit<Planned, "status" | "plan" | "runnersUp">;

function toPlanned(
  answered: Answered,
  terms: Terms,
  weeks: WeeksAsked,
  calendar: Calendar,
  found: readonly Preparation[],
  pinBreaks: readonly ModelRuleId[],
  brief: boolean,
): Planned {
  const { request, assessment } = answered;
  const [best, ...others] = found as readonly [Preparation, ...Preparation[]];
  const plan = toPlan(best, request, calendar);
  const broken = withM2(pinBreaks, plan, weeks);
  const rangeRules = answered.decisions.filter((d) => d.about === "prepRange").flatMap((d) => d.rules);
  return {
    ...answered,
    status: "planned",
    plan,
    runnersUp: others.map((other) => ({
      plan: toPlan(other, request, calendar),
      ...compareCosts(best, other),
    })),
    decisions: brief
      ? answered.decisions
      : [
          ...answered.decisions,
          ...explainPreparation(terms, weeks, best, others, rangeRules),
          explainCalendar(request, calendar),
        ],
    cautions: [...answered.cautions, ...cautionPlan(request, assessment, terms, plan, broken)],
  };
}

function toDoesNotFit(answered: Answered, terms: Terms, weeks: WeeksAsked, calendar: Calendar): DoesNotFit {
  const { request } = answered;
  const nearest = findNearest(terms, weeks, calendar);
  const bent = nearest.bent;
  const told: Nearest = {
    earliestMeetDate: nearest.earliestMeetDate,
    latestStartDate: nearest.latestStartDate,
    plan: bent && {
      plan: toPlan(bent.preparation, request, calendar),
      breaks: rulesOf(withM2(bent.breaks, bent.preparation, weeks)),
    },
  };
  return { ...answered, status: "doesNotFit", binding: rulesOf(findBinding(terms, weeks)), nearest: told };
}

/** The rules broken, and M2 where the coach set more weeks than the lifter can use. */
function withM2(
  breaks: readonly ModelRuleId[],
  { directedWeeks }: { directedWeeks: number },
  weeks: WeeksAsked,
) {
  return directedWeeks > weeks.most ? ([...breaks, "M2"] as const) : breaks;
}

function toPlan(preparation: Preparation, request: PlanRequest, calendar: Calendar): Plan {
  const laid = layWeeks({
    weekStarts: calendar.weekStarts,
    hardWeeks: preparation.hardWeeks,
    lifts: preparation.lifts,
  });
  return {
    meetDate: request.meetDate,
    bridgeWeeks: calendar.available - preparation.directedWeeks,
    directedWeeks: preparation.directedWeeks,
    ...laid,
    lifts: preparation.lifts,
    costs: preparation.costs,
    cost: preparation.cost,
  };
}

function explainCalendar(request: PlanRequest, calendar: Calendar): Decision {
  const { startDate, meetDate, weekStart } = request;
  return {
    about: "calendar",
    value: calendar.meetWeekStart,
    rules: [],
    given: { startDate, meetDate, weekStart },
    rejected: [],
  };
}

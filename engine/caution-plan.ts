/** What a coach should know beside the plan. */
import type { Assessment, Plan } from "./answer";
import { daysBetween, type Day } from "./calendar/day";
import { rulesOf } from "./choose-preparation";
import type { Terms } from "./preparation";
import { scaleTarget } from "./phases/set-targets";
import type { PlanRequest } from "./request";
import { LONG_BRIDGE, PARTIAL_WEEK } from "./rules/preparation";
import type { ModelRuleId } from "./rules/model";
import type { Caution } from "./why";
import { LIFTS, PHASES, type Level, type Lift } from "./words";

/** What the assessment alone gives, beside what the coach set. */
export interface Assessed {
  readonly level: Level;
  readonly hardWeeks: number;
  readonly tableClassName: string;
  readonly missing: readonly Lift[];
  readonly classTableFrom: Day | null;
}

/** Cautions that hold for any answer about this lifter. */
export function cautionRequest(
  request: PlanRequest,
  assessment: Assessment,
  assessed: Assessed,
): readonly Caution[] {
  const { least, most } = assessment.prepRange;
  const overridden = (
    field: "level" | "hardWeeks" | "classLimitKg",
    set: string | null,
    own: string,
  ): readonly Caution[] =>
    set === null || set === own ? [] : [{ code: "overridden", field, set, assessed: own }];
  const prepWeeks: readonly Caution[] =
    request.prepWeeks === null
      ? []
      : [
          {
            code: "overridden",
            field: "prepWeeks",
            set: String(request.prepWeeks),
            assessed: `${least}–${most}`,
          },
        ];
  return [
    { code: "training" },
    { code: "federation", tableFrom: assessed.classTableFrom },
    ...(assessed.missing.length > 0 ? [{ code: "blankBests", missing: assessed.missing } as const] : []),
    ...overridden("level", request.level, assessed.level),
    ...overridden(
      "hardWeeks",
      request.hardWeeks === null ? null : String(request.hardWeeks),
      String(assessed.hardWeeks),
    ),
    ...overridden("classLimitKg", request.classChoice && assessment.className, assessed.tableClassName),
    ...prepWeeks,
  ];
}

/** Cautions about a plan's own shape. */
export function cautionPlan(
  request: PlanRequest,
  assessment: Assessment,
  terms: Terms,
  plan: Plan,
  broken: readonly ModelRuleId[],
): readonly Caution[] {
  const { least, most } = assessment.prepRange;
  const cautions: Caution[] = rulesOf(broken).map((rule) => ({ code: "pinBreaksRule", rule }));
  const weeks = plan.directedWeeks;
  if (weeks < least) cautions.push({ code: "shortPreparation", weeks, least });
  if (weeks > most) cautions.push({ code: "longPreparation", weeks, most });
  if (plan.bridgeWeeks > 0 && plan.bridgeWeeks + weeks <= most)
    cautions.push({ code: "unusedWeek", weeks: plan.bridgeWeeks });
  if (plan.bridgeWeeks > LONG_BRIDGE.weeks) {
    cautions.push({ code: "longBridge", weeks: plan.bridgeWeeks, hardWeeks: assessment.hardWeeks });
  }
  const firstDays = 7 - daysBetween(plan.weeks[0]!.startDate, request.startDate);
  if (firstDays < PARTIAL_WEEK.days) cautions.push({ code: "partialFirstWeek", days: firstDays });
  const meetDays = daysBetween(plan.weeks.at(-1)!.startDate, request.meetDate);
  if (meetDays < PARTIAL_WEEK.days) cautions.push({ code: "shortMeetWeek", days: meetDays });
  for (const lift of LIFTS) {
    for (const phase of PHASES) {
      const { low, high } = scaleTarget(terms.targets[lift].phases[phase], weeks);
      const actual = plan.lifts[lift][phase];
      if (actual < Math.floor(low) || actual > Math.ceil(high)) {
        cautions.push({ code: "outsideUsual", lift, phase, weeks: actual, low, high });
      }
    }
  }
  return cautions;
}

/** What a coach should know beside the plan. */
import type { Caution } from "../../engine";
import { capitalised, countText, listText, numberText, weeksText } from "./count-text";
import { dayText } from "./day-text";
import { FIELD_NAMES } from "./field-text";
import { ruleText } from "./rule-text";

const TRAINING = [
  "This plans training; it does not judge health.",
  "Stop and see a clinician for chest pain, fainting, unexplained breathlessness, new numbness or weakness, loss of bladder or bowel control, an acute injury, or dark urine with severe muscle pain.",
  "With known heart, metabolic or kidney disease, in pregnancy or after birth, when ill or with an eating disorder, ask a clinician before starting.",
  "Under-18s train under a qualified adult and do not cut weight for a class.",
  "Take maximal attempts with spotters and safeties set.",
  "Nothing here advises losing weight or water to make a class.",
].join(" ");

/** The shortest form of the training caution, where there is room for one line. */
export const SHORT_CAUTION =
  "This plans training; it does not judge health. Chest pain, fainting, new numbness or weakness, acute injury: stop and see a clinician.";

export function cautionText(caution: Caution): string {
  switch (caution.code) {
    case "training":
      return TRAINING;
    case "federation":
      return `Check your federation's current rules. The weight classes here are those ${
        caution.tableFrom === null
          ? "of the oldest table known here"
          : `in force from ${dayText(caution.tableFrom)}`
      }; a later change is not confirmed either way, and any limit can be set by hand.`;
    case "blankBests":
      return `Best ${listText(caution.missing)} unknown: the level rests on the years of training alone.`;
    case "overridden":
      return `${FIELD_NAMES[caution.field]} set by hand: ${caution.set}${unitOf(caution.field)}, where the assessment gives ${caution.assessed}.`;
    case "shortPreparation":
      return `${capitalised(weeksText(caution.weeks))} of directed preparation: this lifter makes good use of ${caution.least} or more.`;
    case "longPreparation":
      return `${capitalised(weeksText(caution.weeks))} of directed preparation, more than the ${caution.most} this lifter makes good use of: possible once, not back to back.`;
    case "unusedWeek":
      return `${capitalised(countText(caution.weeks, "week"))} the lifter could use ${caution.weeks === 1 ? "is" : "are"} a bridge instead: no better plan fills all weeks.`;
    case "longBridge":
      return `The bridge of ${weeksText(caution.weeks)} is long: give it deloads of its own, about every ${weeksText(caution.hardWeeks)}.`;
    case "partialFirstWeek":
      return `Only ${countText(caution.days, "day")} of the first week ${caution.days === 1 ? "is" : "are"} left after the start day.`;
    case "shortMeetWeek":
      return caution.days === 0
        ? "The meet is on the first day of its week, so the taper falls in the week before: plan that week's last days with care."
        : `Only ${countText(caution.days, "day")} of meet week ${caution.days === 1 ? "comes" : "come"} before the meet: the taper reaches back into the week before.`;
    case "outsideUsual":
      return `${capitalised(caution.lift)} has ${weeksText(caution.weeks)} of ${caution.phase}; usual for this lifter and length: ${usualText(caution.low, caution.high)}.`;
    case "pinBreaksRule":
      return `What was set by hand breaks a rule: ${ruleText(caution.rule)}.`;
  }
}

function unitOf(field: "level" | "hardWeeks" | "prepWeeks" | "classLimitKg"): string {
  return field === "classLimitKg" ? " kg" : "";
}

function usualText(low: number, high: number): string {
  return low === high ? weeksText(low) : `${numberText(low)} to ${weeksText(high)}`;
}

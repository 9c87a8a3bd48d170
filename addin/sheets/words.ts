/** Every sentence of the add-in about plans, in one place to import from. */
export { allowedText } from "./allowed-text";
export { classText, sumText } from "./assessment-text";
export { cautionText, SHORT_CAUTION } from "./caution-text";
export { runnerUpText, type RunnerUpText } from "./choice-text";
export { costText } from "./cost-text";
export { dayOfSerial, daySerial, dayText } from "./day-text";
export { FIELD_NAMES, fieldText, ROSTER_HEADINGS } from "./field-text";
export { nearestText } from "./nearest-text";
export { planInWords, rhythmText, splitText } from "./plan-text";
export { givenText, problemText } from "./problem-text";
export { ruleText } from "./rule-text";
export { standingText } from "./standing-text";
export { decisionText, type DecisionText } from "./why-text";

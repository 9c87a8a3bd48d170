/** What each rule row is about, named by its id. Figures are read from the row itself. */
import { assert, type RuleRow } from "../../engine";
import { numberText, spacedText } from "./count-text";

/** A figure of a row, such as figureOf(M3, "peaking", "max"). Throws when the row has no such number. */
function figureOf(rule: RuleRow, ...path: readonly string[]): string {
  const value = path.reduce<unknown>(
    (at, key) => (typeof at === "object" && at !== null ? (at as Record<string, unknown>)[key] : undefined),
    rule,
  );
  assert(
    typeof value === "number",
    "a rule row without a figure",
    { id: rule.id, path },
    "the row was renamed",
  );
  return numberText(value);
}

const span = (rule: RuleRow, of: readonly string[], min = "min", max = "max"): string =>
  `${figureOf(rule, ...of, min)} to ${figureOf(rule, ...of, max)}`;

const sexText = (sex: string | undefined): string => (sex === "female" ? "women" : "men");

const SINGLE: Readonly<Record<string, (rule: RuleRow) => string>> = {
  M1: (rule) => `${span(rule, [])} hard weeks before each deload, close to the lifter's own number`,
  M2: () => "every week is used that the lifter can make good use of, and none beyond",
  M3: (rule) =>
    `${span(rule, ["hypertrophy"])} weeks of hypertrophy or none, ${span(rule, ["strength"])} of strength, ${span(rule, ["peaking"])} of peaking`,
  M4: (rule) =>
    `hypertrophy at most ${figureOf(rule, "hypertrophy", "maxPct")} % of the preparation, strength ${span(rule, ["strength"], "minPct", "maxPct")} %, peaking ${span(rule, ["peaking"], "minPct", "maxPct")} %`,
  M5: () => "no lift peaks while another is in hypertrophy",
  M6: () => "every lift is in peaking in meet week",
  M7: () => "all lifts share their deloads",
  "classes.set": () => "the class limit the coach set",
  "classes.snap": () => "how near a limit must be to count as the table's",
  "level.withinYears": () => "strength moves the level one step from the years at most",
  "level.veryAdvancedNeedsBoth": () => "very advanced takes both the years and the strength",
  "hardWeeks.explosive": () => "hard weeks of an explosive lifter",
  "hardWeeks.brandNew": () => "hard weeks of a brand-new lifter",
  "hardWeeks.rounding": () => "rounding to whole weeks",
  "prep.longBridge": () => "what counts as a long bridge",
  "prep.partialWeek": () => "what counts as a short week",
  "cost.target": () => "cost of a week away from a phase's target",
  "cost.outside": () => "cost of a week outside a phase's usual range",
  "cost.rhythm": () => "cost of a week away from the lifter's rhythm",
  "cost.finalShorter": () => "cost of a shorter final mesocycle",
  "cost.changeInside": () => "cost of a phase change inside a mesocycle",
  "cost.longerThanBefore": () => "cost of a mesocycle longer than the one before",
  "cost.exposure": () => "cost of a heavy exposure missed in peaking",
  "cost.unusedWeek": () => "cost of a usable week left to general training",
  "cost.spread": () => "extra weight of targets when lifts are spread",
  runnersUp: () => "how many other plans are shown",
  "exposures.lightWoman": () => "fewer heavy exposures for a woman in a light class",
  "gl.guard": () => "lightest bodyweight that gets points",
};

function adjustedFor(who: string): string {
  switch (who) {
    case "light":
    case "heavy":
      return `a ${who} class`;
    case "bench":
    case "deadlift":
      return `the ${who}`;
    default:
      return `a ${spacedText(who)}`;
  }
}

/** Rows of one family, by the parts of their ids after the first. */
const FAMILY: Readonly<Record<string, (...parts: readonly string[]) => string>> = {
  classes: (sex) => `weight classes of ${sexText(sex)}`,
  size: (sex) => `size bands of the classes of ${sexText(sex)}`,
  dots: (sex) => `DOTS formula for ${sexText(sex)}`,
  gl: (sex) => `GL points formula for ${sexText(sex)}`,
  percentiles: (_kind, sex) => `DOTS of ${sexText(sex)} at open meets`,
  level: (by) => (by === "years" ? "levels by years of training" : "levels by strength among competitors"),
  hardWeeks: (kind, which) => `hard weeks by ${kind}: ${spacedText(which ?? "")}`,
  prep: () => "useful length of a preparation by level and size",
  phases: () => "phase lengths by level and room in the class",
  peaking: (level, who) => `peaking of ${spacedText(level ?? "")} lifters: ${spacedText(who ?? "")}`,
  shift: (who, phase) => `${phase ?? ""} adjusted for ${adjustedFor(who ?? "")}`,
  exposures: () => "heavy exposures a peak should hold",
  spacing: (which) => `days between heavy exposures: ${spacedText(which ?? "")}`,
  limits: () => "what a field accepts",
  unusual: () => "what is questioned",
};

/** A rule's name in words. Throws for a rule that has none. */
export function ruleText(rule: RuleRow): string {
  if (Object.hasOwn(SINGLE, rule.id)) return SINGLE[rule.id]!(rule);
  const [head = "", ...parts] = rule.id.split(".");
  const name = Object.hasOwn(FAMILY, head) ? FAMILY[head] : undefined;
  assert(name, "a rule without words", { id: rule.id }, "it is new and wants a line in rule-text.ts");
  return name(...parts);
}

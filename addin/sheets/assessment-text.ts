/** Decisions about the lifter in words: class, size, strength, level, hard weeks, useful length. */
import { LEVELS, type Decision, type Sex, type SumItem } from "../../engine";
import { listText, numberText, spacedText, weeksText, withArticle } from "./count-text";
import { publishedOnHardWeeks } from "./published";
import type { Worded } from "./why-text";

type About<A extends Decision["about"]> = Extract<Decision, { about: A }>;

const people = (sex: Sex): string => (sex === "male" ? "men" : "women");

/** "93 kg class", "class over 120 kg" */
export function classText(className: string): string {
  return className.endsWith("+") ? `class over ${className.slice(0, -1)} kg` : `${className} kg class`;
}

/** "93 kg", "over 120 kg": where the word stands beside it. */
export function classLimitText(className: string): string {
  return className.endsWith("+") ? `over ${className.slice(0, -1)} kg` : `${className} kg`;
}

/** "71st" */
function ordinal(value: number): string {
  const whole = Math.round(value);
  const ending =
    whole % 100 >= 11 && whole % 100 <= 13 ? "th" : (["th", "st", "nd", "rd"][whole % 10] ?? "th");
  return `${whole}${ending}`;
}

export function classWords({ value, given, rejected }: About<"class">): Worded {
  const { bodyweightKg, sex, set } = given;
  const byTable = `${numberText(bodyweightKg)} kg bodyweight falls in it by the federation's classes of ${people(sex)} in force on meet day`;
  return {
    about: "Weight class",
    value: classText(value),
    because: [set ? "Set by the coach." : `${byTable}.`],
    rejected: rejected.map((other) => `By bodyweight and the federation's table: ${classText(other)}`),
  };
}

export function sizeWords({ value, given, rejected }: About<"size">): Worded {
  return {
    about: "Size",
    value,
    because: [
      `The ${classText(given.className)} counts as ${value} among the classes of ${people(given.sex)}.`,
    ],
    rejected: [`${listText(rejected, "or")}: other classes`],
  };
}

export function strengthWords({ value, given }: About<"strength">): Worded {
  const about = "Strength among competitors";
  const { totalKg, dots, missing, sex } = given;
  if (value === null || totalKg === null || dots === null) {
    const because = [
      `Best ${listText(missing)} unknown, so there is no total to compare: the years alone set the level.`,
    ];
    return { about, value: "not known", because, rejected: [] };
  }
  return {
    about,
    value: `${ordinal(value)} percentile`,
    because: [
      `Total ${numberText(totalKg)} kg, ${numberText(dots)} DOTS: ahead of about ${Math.round(value)} % of ${people(sex)}'s unequipped totals at open meets.`,
      "Those are people who compete, not all who train.",
    ],
    rejected: [],
  };
}

export function levelWords({ value, given, rejected }: About<"level">): Worded {
  const { byStrength, byYears, trainingYears, set } = given;
  const years = numberText(trainingYears);
  const because = [
    ...(set ? ["Set by the coach."] : []),
    `${years} ${years === "1" ? "year" : "years"} of training: ${byYears}.`,
    byStrength === null
      ? "Strength not known: by years alone."
      : `Strength among competitors: ${byStrength}.`,
  ];
  if (!set && byStrength !== null && byStrength !== byYears) {
    because.push(
      byYears === value
        ? "The years hold it."
        : `Strength moves it ${LEVELS.indexOf(value) > LEVELS.indexOf(byYears) ? "up" : "down"} from the years.`,
    );
  }
  return { about: "Level", value, because, rejected: rejected.map((other) => `${other}: passed over`) };
}

/** One term of the sum: "light class", "brand new". */
function termText({ rule }: SumItem): string {
  const [, kind = "", which = ""] = rule.id.split(".");
  switch (kind) {
    case "size":
      return `${which} class`;
    case "sex":
      return which === "female" ? "woman" : "man";
    case "recovery":
      return `${which} recovery`;
    default:
      return spacedText(which === "" ? kind : which);
  }
}

/** "5.0 beginner + 0.3 light class + 0.1 woman + 0.2 brand new = 5.6, rounded to 6"; terms of nothing left out. */
export function sumText(items: readonly SumItem[], sumTenths: number, assessed: number): string {
  const tenths = (value: number): string => (value / 10).toFixed(1);
  const terms = items.filter((item, index) => index === 0 || item.tenths !== 0);
  const sum = terms.map((item, index) => {
    const sign = index === 0 ? "" : item.tenths < 0 ? " − " : " + ";
    return `${sign}${tenths(index === 0 ? item.tenths : Math.abs(item.tenths))} ${termText(item)}`;
  });
  return `${sum.join("")} = ${tenths(sumTenths)}, rounded to ${assessed}`;
}

export function hardWeeksWords({ value, given, rejected }: About<"hardWeeks">): Worded {
  const sum = sumText(given.items, given.sumTenths, given.assessed);
  return {
    about: "Hard weeks before a deload",
    value: String(value),
    because: [
      ...(given.set ? ["Set by the coach.", `The assessment alone: ${sum}.`] : [`${sum}.`]),
      ...publishedOnHardWeeks(),
    ],
    rejected: rejected.map((other) => `${other}: by the assessment alone`),
  };
}

export function prepRangeWords({ value, given }: About<"prepRange">): Worded {
  const lifter = `${withArticle(given.level)} lifter in a ${given.size} class`;
  return {
    about: "Useful length of preparation",
    value: `${value.least} to ${weeksText(value.most)}`,
    because: [`What ${lifter} can make good use of; more is possible once, not back to back.`],
    rejected: [],
  };
}

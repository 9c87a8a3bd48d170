/** What is wrong with the input: the field, what was given, what is allowed, and what would do. */
import { isDay, type Problem } from "../../engine";
import { allowedText } from "./allowed-text";
import { shortened } from "./count-text";
import { dayText } from "./day-text";
import { fieldText } from "./field-text";

const LONGEST_GIVEN = 40;

/** What was given, short enough to read; text in quotes. */
export function givenText(given: unknown): string {
  switch (typeof given) {
    case "string":
      return `"${shortened(given.replace(/\s+/g, " "), LONGEST_GIVEN)}"`;
    case "number":
    case "bigint":
      return shortened(String(given), LONGEST_GIVEN);
    case "boolean":
      return given ? "yes" : "no";
    case "undefined":
      return "nothing";
    case "object":
      return given === null ? "nothing" : Array.isArray(given) ? "a list" : "a group of values";
    case "symbol":
    case "function":
      return "something that is no value";
  }
}

/** `Bodyweight: given "abc"; allowed: a number from 25 to 300 kg.` */
export function problemText(problem: Problem): string {
  const { path, given, allowed, fix } = problem;
  const remedy = fix === null ? "" : ` Write ${fix}.`;
  const gave = (comment = ""): string =>
    `${fieldText(path)}: given ${givenText(given)}${comment}; allowed: ${allowedText(allowed)}.${remedy}`;
  switch (problem.code) {
    case "missing":
      return `${fieldText(path)}: blank; allowed: ${allowedText(allowed)}.${remedy}`;
    case "decimalComma":
      return gave(", with a comma for the decimals");
    case "notANumber":
    case "outOfRange":
    case "notOneOf":
      return gave();
    case "notWhole":
      return gave(", which is not whole");
    case "notText":
      return gave(", which is not text");
    case "notADay":
      return gave(", which is not a date");
    case "noSuchDay":
      return gave(", a date that does not exist");
    case "meetBeforeStart":
    case "meetTooFar":
      return `${fieldText(path)}: given ${typeof given === "string" && isDay(given) ? dayText(given) : givenText(given)}, ${
        problem.code === "meetTooFar" ? "too far ahead" : "before the start"
      }; allowed: ${allowedText(allowed)}.${remedy}`;
    case "classBelowBodyweight":
      return gave(", below the bodyweight");
    case "tooLong":
      return gave(", which is long and is cut where it does not fit");
    case "formulaSign":
      return `${fieldText(path)}: given ${givenText(given)}, which begins like a formula; it is written as text.${remedy}`;
    case "unusual":
      return `${fieldText(path)}: given ${givenText(given)}, beyond nearly every result; look again. Usual: ${allowedText(allowed)}.${remedy}`;
    case "unusualShare":
      return `${fieldText(path)}: given ${givenText(given)}, an unusual share of the total; look again at all three lifts. Usual: ${allowedText(allowed)}.${remedy}`;
    case "unknownField":
      return `${shortened(fieldText(path), LONGEST_GIVEN)}: not a field that is known here, so it is left out; known: ${allowedText(allowed)}.${
        fix === null ? "" : ` Meant: ${fieldText(fix)}?`
      }`;
    case "notAnObject":
      return gave();
  }
}

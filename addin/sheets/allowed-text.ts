/** What a field accepts, in words. */
import type { Allowed } from "../../engine";
import { listText, numberText } from "./count-text";
import { dayText } from "./day-text";
import { fieldText } from "./field-text";

const EXAMPLE_DAY = "2027-05-15";

export function allowedText(allowed: Allowed): string {
  switch (allowed.kind) {
    case "number": {
      const unit = allowed.unit === "" ? "" : ` ${allowed.unit}`;
      const number = allowed.whole ? "a whole number" : "a number";
      return `${number} from ${numberText(allowed.min)} to ${numberText(allowed.max)}${unit}`;
    }
    case "oneOf":
      return listText(allowed.values, "or");
    case "day":
      return `a date, as yyyy-mm-dd such as ${EXAMPLE_DAY}`;
    case "dayFrom":
      return `a date from ${dayText(allowed.from)} to ${dayText(allowed.to)}`;
    case "text":
      return `text of up to ${allowed.maxLength} characters`;
    case "classLimit":
      return `a limit of ${numberText(allowed.min)} ${allowed.unit} or more, or blank`;
    case "fields":
      return listText(allowed.names.map(fieldText));
    case "object":
      return "one lifter's fields, each with its value";
  }
}

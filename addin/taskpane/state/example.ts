/** An invented lifter of the Harbour Street Barbell demo gym, so that the pane opens with a plan to look at. */
import { addDays, weekdayOf } from "../../../engine/index";
import type { Typed } from "../../read/form";

const MONDAY = 1;
const WEEKS_TO_MEET = 16;
/** From a Monday to the Saturday of its week. */
const MONDAY_TO_SATURDAY = 5;

/** The next Monday after `today` (ISO day), never `today` itself. */
export function nextMonday(today: string): string {
  return addDays(today, ((MONDAY - weekdayOf(today) + 6) % 7) + 1);
}

/** The example's form: it starts next Monday, and the meet is on the Saturday of the sixteenth week. */
export function exampleForm(today: string): Typed {
  const startDate = nextMonday(today);
  return {
    lifter: "Mara Quill",
    sex: "female",
    bodyweightKg: "67.5",
    trainingYears: "4",
    squatKg: "135",
    benchKg: "77.5",
    deadliftKg: "160",
    startDate,
    meetDate: addDays(startDate, (WEEKS_TO_MEET - 1) * 7 + MONDAY_TO_SATURDAY),
    classLimitKg: "",
    roomInClass: "some",
    recovery: "normal",
    explosive: "no",
    level: "",
    hardWeeks: "",
    prepWeeks: "",
    weekStart: "monday",
    arrangement: "as needed",
  };
}

/** Days in the few short forms of the pane, from the sheets' wording of a day. */
import { isDay, WEEKDAYS, weekdayOf } from "../../../engine/index";
import { dayText } from "../../sheets/words";

/** "Mar" for "2027-03-13". */
export const monthOf = (day: string): string => dayText(day).split(" ")[2]!;

/** "13 Mar" for "2027-03-13". */
export const shortDay = (day: string): string => dayText(day).split(" ").slice(1, 3).join(" ");

/** "Saturday" for "2027-03-13"; null for text that is no day. */
export function weekdayName(text: string): string | null {
  if (!isDay(text)) return null;
  const name = WEEKDAYS[weekdayOf(text)]!;
  return name.charAt(0).toUpperCase() + name.slice(1);
}

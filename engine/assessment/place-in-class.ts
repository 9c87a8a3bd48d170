/** The lifter's weight class, and how big it is among its sex's. */
import type { Day } from "../calendar/day";
import type { ClassChoice } from "../request";
import type { Decision } from "../why";
import { SIZES, type Sex, type Size } from "../words";
import { classOfLimit, findWeightClass, sizeOfClass } from "./weight-class";

export interface Placed {
  readonly className: string;
  readonly size: Size;
  /** The class the federation's table gives for the bodyweight. */
  readonly tableClassName: string;
  readonly decisions: readonly Decision[];
}

export function placeInClass(
  sex: Sex,
  bodyweightKg: number,
  choice: ClassChoice | null,
  meetDate: Day,
): Placed {
  const byTable = findWeightClass(sex, bodyweightKg, meetDate);
  const set = choice && classOfLimit(sex, choice.open ? `${choice.limitKg}+` : choice.limitKg, meetDate);
  const weightClass = set ?? byTable;
  const band = sizeOfClass(sex, weightClass.limitKg);
  return {
    className: weightClass.name,
    size: band.size,
    tableClassName: byTable.name,
    decisions: [
      {
        about: "class",
        value: weightClass.name,
        rules: [weightClass.row],
        given: { bodyweightKg, sex, set: set !== null },
        rejected: weightClass.name === byTable.name ? [] : [byTable.name],
      },
      {
        about: "size",
        value: band.size,
        rules: [band.row],
        given: { className: weightClass.name, sex },
        rejected: SIZES.filter((size) => size !== band.size),
      },
    ],
  };
}

/**
 * Bodyweight classes of the international federation, dated, and the size bands built on them.
 *
 * A class holds every bodyweight up to and including its limit; the open class ("120+") everything above the last.
 * Federations change their classes: the newest tables here were in force in August 2024, and whether they
 * changed later is not confirmed either way. A coach can set any limit instead.
 */
import type { Day } from "../calendar/day";
import type { Sex, Size } from "../words";
import { house, printed, type RuleRow } from "./sources";

export interface ClassTableRow extends RuleRow {
  readonly sex: Sex;
  /** First day in force; null for the oldest table known here. In force until the sex's next table. */
  readonly validFrom: Day | null;
  /** Limits open to every age, in kg, rising. The open class follows the last. */
  readonly limitsKg: readonly number[];
  /** Limits for sub-juniors and juniors alone: never looked up from a bodyweight, only when a coach sets them. */
  readonly juniorOnlyKg: readonly number[];
}

const ARCHIVE = "meet-data/ipf/CONFIG.toml of the open meet-results archive gingerlifts/opl-data, 2024-08-23";
const UNCONFIRMED = "a later change is not confirmed either way";

export const CLASS_TABLES: readonly ClassTableRow[] = [
  {
    id: "classes.male.before2011",
    sex: "male",
    validFrom: null,
    limitsKg: [52, 56, 60, 67.5, 75, 82.5, 90, 100, 110, 125],
    juniorOnlyKg: [],
    ...printed(ARCHIVE),
  },
  {
    id: "classes.male.2011",
    sex: "male",
    validFrom: "2011-01-01",
    limitsKg: [59, 66, 74, 83, 93, 105, 120],
    juniorOnlyKg: [53],
    ...printed(`${ARCHIVE}; ${UNCONFIRMED}`),
  },
  {
    id: "classes.female.before2011",
    sex: "female",
    validFrom: null,
    limitsKg: [44, 48, 52, 56, 60, 67.5, 75, 82.5, 90],
    juniorOnlyKg: [],
    ...printed(ARCHIVE),
  },
  {
    id: "classes.female.2011",
    sex: "female",
    validFrom: "2011-01-01",
    limitsKg: [47, 52, 57, 63, 72, 84],
    juniorOnlyKg: [43],
    ...printed(ARCHIVE),
  },
  {
    id: "classes.female.2021",
    sex: "female",
    validFrom: "2021-01-01",
    limitsKg: [47, 52, 57, 63, 69, 76, 84],
    juniorOnlyKg: [43],
    ...printed(`${ARCHIVE}; ${UNCONFIRMED}`),
  },
];

/** How far a set limit may lie from a table's and still mean it: limits entered in pounds are whole pounds. */
export const CLASS_SNAP: RuleRow & { readonly withinKg: number } = {
  id: "classes.snap",
  withinKg: 0.3,
  ...house("a limit rounded to whole pounds is off by at most 0.23 kg; no two limits lie closer than 4 kg"),
};

/** A limit that no table in force holds stands as the coach set it: other federations have other classes. */
export const CLASS_SET: RuleRow = {
  id: "classes.set",
  ...house("set by the coach; the federation's table in force does not hold this limit"),
};

export interface SizeRow extends RuleRow {
  readonly sex: Sex;
  readonly size: Size;
  /** Limits above this one, in kg. */
  readonly aboveKg: number;
  /** Up to and including this one, in kg; null when the band has no end, and then it holds the open class too. */
  readonly upToKg: number | null;
}

const PAIRED = house(
  "the eight senior classes of the two sexes paired by rank, so that 74 and 57 are comparable as common practice has it: three light, two middle, three heavy",
);

export const SIZE_ROWS: readonly SizeRow[] = [
  { id: "size.male.light", sex: "male", size: "light", aboveKg: 0, upToKg: 74, ...PAIRED },
  { id: "size.male.middle", sex: "male", size: "middle", aboveKg: 74, upToKg: 93, ...PAIRED },
  { id: "size.male.heavy", sex: "male", size: "heavy", aboveKg: 93, upToKg: null, ...PAIRED },
  { id: "size.female.light", sex: "female", size: "light", aboveKg: 0, upToKg: 57, ...PAIRED },
  { id: "size.female.middle", sex: "female", size: "middle", aboveKg: 57, upToKg: 69, ...PAIRED },
  { id: "size.female.heavy", sex: "female", size: "heavy", aboveKg: 69, upToKg: null, ...PAIRED },
];

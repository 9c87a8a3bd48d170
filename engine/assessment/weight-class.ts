/** Which class a lifter is in, and how big that class is. */
import type { Day } from "../calendar/day";
import { assert } from "../outcome";
import {
  CLASS_SET,
  CLASS_SNAP,
  CLASS_TABLES,
  SIZE_ROWS,
  type ClassTableRow,
  type SizeRow,
} from "../rules/classes";
import type { RuleRow } from "../rules/sources";
import type { Sex, Size } from "../words";

/** A class limit as a coach sets it: kg, or an open class such as "120+". */
export type ClassLimit = number | `${number}+`;

export interface WeightClass {
  /** The table it was found in, or the row that says the coach set it. */
  readonly row: RuleRow;
  /** "74", or "120+" for an open class. */
  readonly name: string;
  /** Null for an open class. */
  readonly limitKg: number | null;
}

/** The class tables of `sex` in force on a day. */
export function classTableOn(sex: Sex, on: Day): ClassTableRow {
  const inForce = CLASS_TABLES.filter(
    (row) => row.sex === sex && (row.validFrom === null || row.validFrom <= on),
  );
  const newest = inForce.reduce<ClassTableRow | undefined>(
    (best, row) => (best === undefined || (row.validFrom ?? "") > (best.validFrom ?? "") ? row : best),
    undefined,
  );
  assert(newest, "No class table", { sex, on }, "rules/classes.ts lost its oldest table");
  return newest;
}

/** The class that holds a bodyweight on the day of the meet: up to and including its limit. Junior-only classes are passed over. */
export function findWeightClass(sex: Sex, bodyweightKg: number, on: Day): WeightClass {
  const row = classTableOn(sex, on);
  const limitKg = row.limitsKg.find((limit) => bodyweightKg <= limit);
  return limitKg === undefined ? openClass(row, lastLimit(row)) : closedClass(row, limitKg);
}

/**
 * The class of a limit that the coach set, in kg or as an open class such as "120+". A limit within 0.3 kg of one in
 * the table (junior-only ones included) is that one, since limits may come from whole pounds; any other stands by itself.
 */
export function classOfLimit(sex: Sex, limit: ClassLimit, on: Day): WeightClass {
  const row = classTableOn(sex, on);
  if (typeof limit === "string") {
    const aboveKg = Number(limit.slice(0, -1));
    assert(
      aboveKg > 0,
      "Not an open class",
      { limit },
      "the request was read without its check of class limits",
    );
    return isSameLimit(aboveKg, lastLimit(row))
      ? openClass(row, lastLimit(row))
      : openClass(CLASS_SET, aboveKg);
  }
  const listed = [...row.juniorOnlyKg, ...row.limitsKg].find((each) => isSameLimit(limit, each));
  return listed === undefined ? closedClass(CLASS_SET, limit) : closedClass(row, listed);
}

/** How big a class is among its sex's; an open class (null) counts with the heavy. */
export function sizeOfClass(
  sex: Sex,
  limitKg: number | null,
): { readonly row: SizeRow; readonly size: Size } {
  const row = SIZE_ROWS.find(
    (each) => each.sex === sex && (each.upToKg === null || (limitKg !== null && limitKg <= each.upToKg)),
  );
  assert(row, "No size band", { sex, limitKg }, "rules/classes.ts lost the band without an end");
  return { row, size: row.size };
}

function isSameLimit(given: number, listed: number): boolean {
  return Math.abs(given - listed) <= CLASS_SNAP.withinKg;
}

function lastLimit(row: ClassTableRow): number {
  const last = row.limitsKg.at(-1);
  assert(
    last !== undefined,
    "Empty class table",
    { id: row.id },
    "rules/classes.ts has a table without limits",
  );
  return last;
}

const nameOf = (kg: number): string => String(Number(kg.toFixed(2)));
const openClass = (row: RuleRow, aboveKg: number): WeightClass => ({
  row,
  name: `${nameOf(aboveKg)}+`,
  limitKg: null,
});
const closedClass = (row: RuleRow, limitKg: number): WeightClass => ({ row, name: nameOf(limitKg), limitKg });

/** How many weeks of directed preparation this lifter can make good use of. */
import { assert } from "../outcome";
import { PREP_RANGE } from "../rules/preparation";
import type { Decision } from "../why";
import type { Level, RoomInClass, Size } from "../words";

export interface PrepRange {
  readonly least: number;
  readonly most: number;
  readonly decisions: readonly Decision[];
}

export function rangePreparation(level: Level, size: Size, roomInClass: RoomInClass): PrepRange {
  const row = PREP_RANGE.find((each) => each.level === level && each.size === size);
  assert(row, "no preparation row", { level, size }, "a row is missing in rules/preparation.ts");
  const value = { least: row.min, most: row.max };
  return {
    ...value,
    decisions: [
      { about: "prepRange", value, rules: [row], given: { level, size, roomInClass }, rejected: [] },
    ],
  };
}

/**
 * Where a lifter's DOTS stand among open meet results of the same sex. Those are competitors alone (see
 * rules/percentiles.ts): the 50th percentile is the middle of people who enter meets, well above that of people who train.
 */
import { assert } from "../outcome";
import { DOTS_PERCENTILES, type PercentileRow } from "../rules/percentiles";
import type { Sex } from "../words";

/** The percentile (1 to 99) of a DOTS score, linear between the table's points and held at its ends. */
export function dotsPercentile(sex: Sex, dots: number): number {
  const points = rowOf(sex).dots;
  let low = 0;
  let high = points.length - 1;
  if (dots <= points[low]!) return 1;
  if (dots >= points[high]!) return points.length;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (points[middle]! <= dots) low = middle;
    else high = middle;
  }
  return low + 1 + (dots - points[low]!) / (points[high]! - points[low]!);
}

/** The DOTS score at a percentile from 1 to 99, linear between the table's points. */
export function dotsAtPercentile(sex: Sex, percentile: number): number {
  const points = rowOf(sex).dots;
  assert(
    percentile >= 1 && percentile <= points.length,
    "Percentile",
    { percentile },
    "a share was given for a percentile",
  );
  const below = Math.floor(percentile);
  const low = points[below - 1]!;
  return below === points.length ? low : low + (percentile - below) * (points[below]! - low);
}

function rowOf(sex: Sex): PercentileRow {
  const row = DOTS_PERCENTILES.find((each) => each.sex === sex);
  assert(row, "No percentiles", { sex }, "rules/percentiles.ts lost a row");
  return row;
}

/** Words that are one slip of typing away from another word. */

const SHORTEST = 4;
const LONG = 7;

/** Whether `typed` is one slip (two in a long word) from `known`: a letter missing, added, changed or swapped. */
export function isNearMiss(typed: string, known: string): boolean {
  const slips = known.length >= LONG ? 2 : 1;
  if (known.length < SHORTEST || Math.abs(typed.length - known.length) > slips) return false;
  return distance(typed, known) <= slips;
}

/** Edits between two words, a swap of neighbours counted as one (optimal string alignment). */
function distance(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const isSame = a[i - 1] === b[j - 1];
      const changed = rows[i - 1]![j - 1]! + (isSame ? 0 : 1);
      let least = Math.min(rows[i - 1]![j]! + 1, row[j - 1]! + 1, changed);
      const isSwap = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (isSwap) least = Math.min(least, rows[i - 2]![j - 2]! + 1);
      row.push(least);
    }
    rows.push(row);
  }
  return rows[a.length]![b.length]!;
}

/** Names for new sheets: allowed characters, at most 31 of them, none taken. */
import { cleanText } from "./clean-text";

const LONGEST = 31;

/** Cuts to `most` UTF-16 units without splitting a character. */
function cut(text: string, most: number): string {
  let kept = "";
  for (const { segment } of new Intl.Segmenter("en", { granularity: "grapheme" }).segment(text)) {
    if (kept.length + segment.length > most) break;
    kept += segment;
  }
  return kept.trimEnd();
}

const folded = (name: string): string => name.normalize("NFKC").toLowerCase();

/** `kind` and a lifter's name, without what a sheet name may not hold, then `suffix`. */
function makeName(kind: string, lifter: string | null, suffix: string): string {
  const clean = cleanText((lifter ?? "").replace(/[:\\/?*[\]]/g, " "));
  const name = cut(`${kind} ${clean}`.trim(), LONGEST - suffix.length)
    .replace(/'+$/, "")
    .trimEnd();
  return `${name}${suffix}`;
}

/**
 * One free name for each kind, all with the same number: "Plan Ada", "Reasons Ada", or "Plan Ada (2)", "Reasons Ada (2)".
 * Names that differ in case alone count as the same.
 */
export function freeSheetNames(
  kinds: readonly string[],
  lifter: string | null,
  takenNames: readonly string[],
): readonly string[] {
  const taken = new Set(takenNames.map(folded));
  for (let number = 1; ; number++) {
    const names = kinds.map((kind) => makeName(kind, lifter, number === 1 ? "" : ` (${number})`));
    if (names.every((name) => !taken.has(folded(name)))) return names;
  }
}

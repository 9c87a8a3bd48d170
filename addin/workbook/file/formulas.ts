/** Formulas as a file stores them. */

/** Functions newer than the file format, which a file names with a prefix. */
const NEWER = [
  "XLOOKUP",
  "XMATCH",
  "SEQUENCE",
  "IFS",
  "SWITCH",
  "TEXTJOIN",
  "CONCAT",
  "MAXIFS",
  "MINIFS",
  "UNIQUE",
  "FILTER",
  "SORT",
];
const CALL = /([A-Za-z][A-Za-z0-9.]*)\(/g;

/**
 * "=SUM(A1,2)" as "SUM(A1,2)", newer functions prefixed.
 * Throws for a formula of the add-in's own functions: a file opened without the add-in would show errors.
 */
export function fileFormula(formula: string): string {
  return formula
    .replace(/^=/, "")
    .split(/("(?:[^"]|"")*")/)
    .map((piece, index) => (index % 2 === 1 ? piece : prefixNewer(piece, formula)))
    .join("");
}

function prefixNewer(piece: string, formula: string): string {
  return piece.replace(CALL, (call, name: string) => {
    if (/^MEETWARD\./i.test(name)) {
      throw new Error(
        `A file cannot hold ${formula}\nMaybe it was not turned into values before the file was made`,
      );
    }
    return NEWER.includes(name.toUpperCase()) ? `_xlfn.${call}` : call;
  });
}

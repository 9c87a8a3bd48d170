/** Comma-separated text as a table of cells. */
import { parseCsv } from "hucre/csv";

/** Where two part the first line equally often, the one rarer in words comes first. */
const DELIMITERS = ["\t", ";", ","] as const;

/**
 * Reads delimited text; a byte-order mark, quoted cells and every line ending are understood. Commas, semicolons
 * or tabs, whichever parts the first line with words in it.
 * @returns rows of cell texts. Throws an Error in words when a quote is never closed.
 */
export function readCsv(text: string): string[][] {
  const delimiter = detectDelimiter(text);
  const open = findOpenQuote(text, delimiter);
  if (open !== null) throw new Error(`line ${open}: a cell begins with a quote (") that is never closed`);
  return parseCsv(text, { delimiter }) as string[][];
}

/** The delimiter of the first line that is not blank: a decimal comma in a later row must not decide. */
function detectDelimiter(text: string): string {
  const line = text.split(/\r\n|\r|\n/).find((each) => each.trim() !== "") ?? "";
  const unquoted = line.replace(/"(?:[^"]|"")*"/g, "");
  const count = (delimiter: string) => unquoted.split(delimiter).length - 1;
  return DELIMITERS.reduce((best, next) => (count(next) > count(best) ? next : best));
}

/** The line of the quote that is never closed, or null. */
function findOpenQuote(text: string, delimiter: string): number | null {
  const start = new RegExp(`(?:^|[${delimiter}\\r\\n\\ufeff])"`, "g");
  let from = 0;
  for (;;) {
    start.lastIndex = from;
    const found = start.exec(text);
    if (found === null) return null;
    const opened = start.lastIndex - 1;
    let end = text.indexOf('"', opened + 1);
    while (end !== -1 && text[end + 1] === '"') end = text.indexOf('"', end + 2);
    if (end === -1) return text.slice(0, opened).split(/\r\n|\r|\n/).length;
    from = end + 1;
  }
}

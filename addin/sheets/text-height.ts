/** How high a row must be for wrapped text: estimated, a little generous, as no font can be measured here. */

const LINE_POINTS = 15;
const PADDING_POINTS = 4;
/** Fonts differ from host to host: a line of the widest holds about this part of a column's width in characters. */
const FILLED = 0.96;
/** A spreadsheet program refuses higher rows. */
const HIGHEST_POINTS = 409;
/** Lines that text takes in a cell `widthCharacters` wide. */
export function countLines(text: string, widthCharacters: number): number {
  const perLine = Math.max(1, Math.floor(widthCharacters * FILLED));
  return text.split("\n").reduce((lines, paragraph) => lines + linesOfParagraph(paragraph, perLine), 0);
}

function linesOfParagraph(paragraph: string, perLine: number): number {
  let lines = 1;
  let used = 0;
  for (const word of paragraph.split(" ")) {
    const length = [...word].length;
    if (used > 0 && used + 1 + length > perLine) {
      lines += 1;
      used = 0;
    }
    lines += Math.max(0, Math.ceil(length / perLine) - 1);
    used += (used > 0 ? 1 : 0) + Math.min(length, perLine);
  }
  return lines;
}

/** Points for a row whose cells hold these texts at these widths. */
export function heightFor(cells: readonly { readonly text: string; readonly width: number }[]): number {
  const lines = Math.max(1, ...cells.map(({ text, width }) => countLines(text, width)));
  return Math.min(HIGHEST_POINTS, lines * LINE_POINTS + PADDING_POINTS);
}

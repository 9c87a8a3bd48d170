/** The cautions, and what in the input is worth a second look, below the grid. */
import type { Planned } from "../../engine";
import { cautionText } from "./caution-text";
import type { Block } from "./grid-facts";
import { acrossRow, FULL_WIDTH, LAST_COLUMN, type GridLayout } from "./grid-layout";
import { problemText } from "./problem-text";
import { cleanText } from "./clean-text";
import { heightFor } from "./text-height";

export interface ReadFirst extends Block {
  readonly rowHeights: Readonly<Record<number, number>>;
  readonly lastRow: number;
}

export function readFirstBlock(answer: Planned, layout: GridLayout): ReadFirst {
  const top = layout.readFirstRow;
  const lines = [
    ...answer.cautions.map(cautionText),
    ...answer.problems.map((problem) => `Look again. ${cleanText(problemText(problem))}`),
  ];
  const heights = lines.map(
    (text, index) => [top + 1 + index, heightFor([{ text, width: FULL_WIDTH }])] as const,
  );
  return {
    cells: [
      { row: top, column: 0, value: "Read first", style: "heading" },
      ...lines.map((value, index) => ({ row: top + 1 + index, column: 0, value, style: "text" })),
    ],
    merges: [top, ...lines.map((_, index) => top + 1 + index)].map((row) => acrossRow(row, 0, LAST_COLUMN)),
    rowHeights: Object.fromEntries(heights),
    lastRow: top + lines.length,
  };
}

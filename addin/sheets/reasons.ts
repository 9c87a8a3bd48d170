/** The reasons behind a plan: each decision, what it rests on, and what else was possible. */
import type { Planned } from "../../engine";
import { SHORT_CAUTION } from "./caution-text";
import { runnerUpText } from "./choice-text";
import { cleanText, lifterName } from "./clean-text";
import { capitalised } from "./count-text";
import { BASE_LOOKS } from "./looks";
import type { Cell, CellRange, SheetModel } from "./model";
import { planInWords } from "./plan-text";
import { problemText } from "./problem-text";
import { standingText } from "./standing-text";
import { heightFor } from "./text-height";
import { decisionText, type DecisionText } from "./why-text";

/** Characters. */
const WIDTHS = [22, 20, 58, 52, 36] as const;
const FULL_WIDTH = WIDTHS.reduce((sum, width) => sum + width, 0);
const HEADS = ["Decision", "Choice", "Because", "Rests on", "What else was possible"] as const;
const RUNNER_UP_HEADS = ["Another plan", "", "Gains", "Gives up", ""] as const;

const ABOUT_POINTS =
  "Points weigh what a plan leaves undone, by weights of our own choosing: of all plans that hold the rules, the one with the fewest is taken.";

/** @param name a free sheet name */
export function reasonsSheet(answer: Planned, name: string): SheetModel {
  const cells: Cell[] = [];
  const merges: CellRange[] = [];
  const rowHeights: Record<number, number> = {};
  let row = 0;
  const line = (value: string, style: string, height?: number): void => {
    cells.push({ row, column: 0, value, style });
    merges.push({ row, column: 0, rows: 1, columns: WIDTHS.length });
    rowHeights[row] = height ?? heightFor([{ text: value, width: FULL_WIDTH }]);
    row += 1;
  };
  const table = (texts: readonly string[], styles: readonly string[]): void => {
    texts.forEach((value, column) => {
      const cell = { row, column, style: styles[column]! };
      cells.push(value === "" ? cell : { ...cell, value });
    });
    rowHeights[row] = heightFor(texts.map((text, column) => ({ text, width: WIDTHS[column]! })));
    row += 1;
  };

  line(`Reasons: ${lifterName(answer.request.lifter)}`, "title", 26);
  line(SHORT_CAUTION, "pointer");
  for (const text of planInWords(answer)) line(text, "text");
  line(ABOUT_POINTS, "faint");
  const headRow = row;
  table(
    HEADS,
    HEADS.map(() => "headLeft"),
  );
  for (const decision of answer.decisions) {
    table(decisionTexts(decisionText(decision)), ["boxBold", "boxBold", "box", "box", "box"]);
  }
  row += 1;
  line("Other plans", "heading", 22);
  if (answer.runnersUp.length === 0) line("No other pattern of mesocycles holds all the rules.", "text");
  else {
    table(
      RUNNER_UP_HEADS,
      RUNNER_UP_HEADS.map(() => "headLeft"),
    );
    for (const runnerUp of answer.runnersUp) {
      const { title, gains, givesUp } = runnerUpText(runnerUp, answer.plan);
      const lines = [title, "", listed(gains), listed(givesUp), ""];
      merges.push({ row, column: 0, rows: 1, columns: 2 }, { row, column: 3, rows: 1, columns: 2 });
      table(lines, ["boxBold", "boxBold", "box", "box", "box"]);
    }
  }
  if (answer.problems.length > 0) {
    row += 1;
    line("Look again at the input", "heading", 22);
    for (const problem of answer.problems) line(cleanText(problemText(problem)), "text");
  }
  return {
    name,
    columns: WIDTHS.map((width) => ({ width })),
    rowHeights,
    cells,
    styles: BASE_LOOKS,
    merges,
    freeze: { rows: headRow + 1, columns: 0 },
    names: [],
    validations: [],
    conditionalFormats: [],
    notes: [],
    print: {
      orientation: "landscape",
      fitWidth: true,
      repeatRows: [headRow, headRow],
      area: { row: 0, column: 0, rows: row, columns: WIDTHS.length },
      footer: "&L&A&RPage &P of &N",
    },
  };
}

function decisionTexts(text: DecisionText): string[] {
  return [text.about, text.value, listed(text.because), restsOn(text), listed(text.rejected)];
}

const listed = (lines: readonly string[]): string =>
  lines.length === 0 ? "–" : lines.map((line) => `• ${capitalised(line)}`).join("\n");

/** Rules of one source and standing together: what they say, then where it comes from. */
function restsOn({ sources }: DecisionText): string {
  const bySource = new Map<string, Set<string>>();
  for (const source of sources) {
    const from = standingText(source);
    bySource.set(from, (bySource.get(from) ?? new Set()).add(source.rule));
  }
  return listed([...bySource].map(([from, rules]) => `${[...rules].join("; ")} (${from})`));
}

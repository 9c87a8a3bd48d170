/** Weeks of each phase and their share of the directed weeks, lift by lift, below the weeks. */
import { LIFTS, PHASES } from "../../engine";
import { cellRef, rangeRef } from "./cell-ref";
import { capitalised } from "./count-text";
import type { Block } from "./grid-facts";
import { acrossRow, COLUMNS, liftColumn, weekColumn, type GridLayout } from "./grid-layout";
import type { Cell, CellRange } from "./model";

const LABEL_TO = COLUMNS.kind;

export function totalsBlock(layout: GridLayout): Block {
  const { totalsRow, directedRow, sharesRow } = layout;
  const cells: Cell[] = [];
  const merges: CellRange[] = [];
  const line = (
    row: number,
    label: string,
    labelStyle: string,
    make: (column: number) => Partial<Cell>,
  ): void => {
    cells.push({ row, column: 0, value: label, style: labelStyle });
    for (let column = 1; column <= LABEL_TO; column++) cells.push({ row, column, style: labelStyle });
    merges.push(acrossRow(row, 0, LABEL_TO));
    for (const lift of LIFTS) cells.push({ row, column: liftColumn(lift), ...make(liftColumn(lift)) });
  };
  cells.push({ row: totalsRow, column: COLUMNS.check, formula: summaryFormula(layout), style: "summary" });
  const nameOfColumn = (column: number) => LIFTS.find((lift) => liftColumn(lift) === column)!;
  line(totalsRow, "Weeks by phase", "headLeft", (column) => ({
    value: capitalised(nameOfColumn(column)),
    style: "head",
  }));
  PHASES.forEach((phase, index) => {
    line(totalsRow + 1 + index, capitalised(phase), "totalLabel", (column) => ({
      formula: `=COUNTIF(${rangeRef(weekColumn(layout, column), "row")},"${phase}")`,
      style: "total",
    }));
    line(sharesRow + index, `${capitalised(phase)}, share of the directed weeks`, "totalLabel", (column) => {
      const directed = cellRef(directedRow, column, "row");
      return {
        formula: `=IF(${directed}=0,"",${cellRef(totalsRow + 1 + index, column)}/${directed})`,
        style: "share",
      };
    });
  });
  const kinds = rangeRef(weekColumn(layout, COLUMNS.kind), "both");
  line(directedRow, "Directed weeks, bridge left out", "totalLabel", () => ({
    formula: `=ROWS(${kinds})-COUNTIF(${kinds},"bridge")`,
    style: "totalBold",
  }));
  return { cells, merges };
}

/** How many weeks the check speaks up about. */
function summaryFormula(layout: GridLayout): string {
  const checks = rangeRef(weekColumn(layout, COLUMNS.check));
  const count = `SUMPRODUCT((${checks}<>"")*1)`;
  return `=IF(${count}=0,"Every week passes the checks.","Weeks to look at: "&${count})`;
}

import type { FWorksheet } from "@univerjs/sheets/facade";
import { waitForCalculation } from "./calculation";
import { readCells } from "./cells";
import type { Grid } from "./grid";
import { columnLetters } from "./ranges";
import type { CellKeepsake } from "./sheet-data";

/** Characters from which on a cell is broken into lines. */
const LONG_TEXT = 30;

interface TableViewParts {
  readonly toggle: HTMLButtonElement;
  readonly view: HTMLElement;
  readonly canvas: HTMLElement;
}

/**
 * The grid is a picture to a screen reader. The toggle lays the sheet over it as a plain table that follows
 * every change, with a box to choose the sheet.
 */
export function installTableView(grid: Grid, { toggle, view, canvas }: TableViewParts): void {
  const isShown = () => toggle.getAttribute("aria-pressed") === "true";
  const refresh = async () => {
    await waitForCalculation(grid);
    if (isShown())
      view.replaceChildren(sheetChooser(grid), ...describeSheet(grid, grid.book.getActiveSheet()));
  };
  toggle.addEventListener("click", () => {
    const shown = !isShown();
    toggle.setAttribute("aria-pressed", String(shown));
    view.hidden = !shown;
    canvas.inert = shown;
    if (shown) void refresh();
  });
  const { Event } = grid.api;
  for (const event of [
    Event.SheetValueChanged,
    Event.ActiveSheetChanged,
    Event.SheetCreated,
    Event.SheetDeleted,
  ]) {
    grid.api.addEvent(event, () => isShown() && void refresh());
  }
}

function sheetChooser(grid: Grid): HTMLElement {
  const chooser = element("select");
  for (const sheet of grid.book.getSheets())
    chooser.append(new Option(sheet.getSheetName(), sheet.getSheetId()));
  chooser.value = grid.book.getActiveSheet().getSheetId();
  chooser.addEventListener("change", () => grid.book.setActiveSheet(chooser.value));
  const label = element("label", "Sheet ");
  label.append(chooser);
  return label;
}

function describeSheet(grid: Grid, sheet: FWorksheet): HTMLElement[] {
  const cells = readCells(grid, sheet.getSheetId());
  const filled = cells.filter(({ value }) => value !== undefined);
  const table = element("table");
  table.append(element("caption", sheet.getSheetName()));
  const columns = Math.max(0, ...filled.map(({ column }) => column + 1));
  const head = table.createTHead().insertRow();
  head.append(element("td"));
  for (let column = 0; column < columns; column++) head.append(header(columnLetters(column), "col"));
  const body = table.createTBody();
  for (const row of new Set(filled.map((cell) => cell.row))) {
    const line = body.insertRow();
    line.append(header(String(row + 1), "row"));
    for (let column = 0; column < columns; column++) addCell(line, sheet, row, column);
  }
  const notes = element("ul");
  for (const { row, column, data } of cells) {
    const { note } = (data.custom ?? {}) as CellKeepsake;
    if (note !== undefined)
      notes.append(element("li", `Note on ${columnLetters(column)}${row + 1}: ${note}`));
  }
  return notes.childElementCount > 0 ? [table, notes] : [table];
}

/** A merged block is one wide cell in its first row. */
function addCell(line: HTMLTableRowElement, sheet: FWorksheet, row: number, column: number): void {
  const block = sheet.getCellMergeData(row, column);
  const merged = block?.getRow() === row ? block : undefined;
  if (merged && merged.getColumn() !== column) return;
  const range = sheet.getRange(row, column);
  const cell = line.insertCell();
  cell.textContent = range.getDisplayValue();
  cell.colSpan = merged?.getWidth() ?? 1;
  cell.classList.toggle("strong", Boolean(range.getCellStyleData()?.bl));
  cell.classList.toggle("long", cell.textContent.length > LONG_TEXT);
}

function header(text: string, scope: "row" | "col"): HTMLElement {
  const cell = element("th", text);
  cell.scope = scope;
  return cell;
}

function element<Tag extends keyof HTMLElementTagNameMap>(tag: Tag, text = ""): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag);
  made.textContent = text;
  return made;
}

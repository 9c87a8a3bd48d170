/** The bench page: the task pane beside an in-browser grid, for people without Excel at hand. */
import { WORKSHEET_FUNCTIONS } from "../../functions/register";
import { today } from "../../read/today";
import { mountPane } from "../../taskpane/mount";
import { BenchWorkbook } from "./bench-workbook";
import { openDemo } from "./demo";
import { downloadWorkbook } from "./download";
import { registerFunctions } from "./functions";
import { mountGrid } from "./grid";
import { showHints } from "./hints";
import { takeSnapshot } from "./snapshot";
import { installTableView } from "./table-view";
import type { BenchWindow } from "./window";
import "./page.css";

function find<E extends HTMLElement = HTMLElement>(id: string): E {
  const element = document.getElementById(id);
  if (!element) throw new Error(`The page has no element #${id}.`);
  return element as E;
}

async function start(): Promise<void> {
  const darkScheme = window.matchMedia("(prefers-color-scheme: dark)");
  const grid = mountGrid("grid", { dark: darkScheme.matches });
  darkScheme.addEventListener("change", ({ matches }) => grid.api.toggleDarkMode(matches));
  registerFunctions(grid.api, WORKSHEET_FUNCTIONS);
  const workbook = new BenchWorkbook(grid);
  await openDemo(grid, workbook);
  showHints(grid, find("hint"));
  installTableView(grid, {
    toggle: find<HTMLButtonElement>("table-toggle"),
    view: find("table-view"),
    canvas: find("grid"),
  });
  const download = find<HTMLButtonElement>("download");
  download.addEventListener("click", () => void downloadWorkbook(grid, download, find("hint")));
  mountPane(find("pane"), { workbook, today: today() });
  window.meetwardBench = {
    workbook,
    snapshot: () => takeSnapshot(grid),
    registerFunctions: (functions) => registerFunctions(grid.api, functions),
    type: (sheetName, cell, content) => {
      grid.book.getSheetByName(sheetName)?.getRange(cell).setValue(content);
    },
  } satisfies BenchWindow;
}

void start();

/**
 * The whole way of a coach without Excel: the bench page in a real browser, a plan written, the
 * workbook downloaded and opened in a real spreadsheet program.
 */
import { readFile } from "node:fs/promises";
import type ExcelJS from "exceljs";
import { BenchPage } from "./browser/bench-page";
import { pageTexts } from "./spreadsheet/pdf-text";
import { SpreadsheetProgram, shownValue } from "./spreadsheet/program";

let program: SpreadsheetProgram;
let bench: BenchPage;

beforeAll(async () => {
  program = await SpreadsheetProgram.start();
  bench = await BenchPage.open({ acceptDownloads: true, viewport: { width: 1400, height: 900 } });
}, 600_000);

afterAll(async () => {
  await program.stop();
  await bench.close();
}, 60_000);

const text = (sheet: ExcelJS.Worksheet, address: string) => String(shownValue(sheet.getCell(address)));
const isoDay = (sheet: ExcelJS.Worksheet, address: string) =>
  (shownValue(sheet.getCell(address)) as Date).toISOString().slice(0, 10);

test("written and downloaded: the spreadsheet program shows the same plan, alive", async () => {
  const { page } = bench;
  const pane = page.locator("#pane");
  await pane.getByLabel("Name").fill("=Wren Calloway");
  // Twelve weeks of an intermediate with four hard weeks: 4+1, 3+1, 2+1 with 5/4/3, the model's worked example.
  await pane.getByLabel("Sex").selectOption("male");
  await pane.getByLabel("Bodyweight").fill("82");
  await pane.getByLabel("Training years").fill("3");
  for (const [lift, best] of [
    ["Squat", "180"],
    ["Bench", "120"],
    ["Deadlift", "210"],
  ] as const) {
    await pane.getByLabel(lift, { exact: false }).first().fill(best);
  }
  await pane.getByLabel("Start date").fill("2027-02-22");
  await pane.getByLabel("Meet date").fill("2027-05-15");
  await pane.getByRole("button", { name: "Write plan" }).click();
  await pane.getByText(/Wrote sheets/).waitFor();
  await bench.settle();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Download workbook" }).click(),
  ]);
  const bytes = new Uint8Array(await readFile((await download.path())!));

  const workbook = await program.recalculate(bytes);
  expect(workbook.worksheets.map((sheet) => sheet.name)).toEqual([
    "Roster",
    "Plan =Wren Calloway",
    "Reasons =Wren Calloway",
  ]);
  const plan = workbook.getWorksheet("Plan =Wren Calloway")!;
  expect(plan.getCell("C3").formula).toBeUndefined();
  expect(text(plan, "C3")).toBe("=Wren Calloway");
  const weeks = Array.from({ length: 12 }, (_, index) => 8 + index);
  expect(weeks.map((row) => Number(text(plan, `A${row}`)))).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
  expect([isoDay(plan, "B8"), isoDay(plan, "B19"), isoDay(plan, "C19")]).toEqual([
    "2027-02-22",
    "2027-05-10",
    "2027-05-15",
  ]);
  const kinds = weeks.map((row) => text(plan, `F${row}`));
  expect(kinds.join(" ")).toBe("hard hard hard hard deload hard hard hard deload hard hard meet");
  const squat = weeks.map((row) => text(plan, `G${row}`)[0]);
  expect(squat.join("")).toBe("hhhhhssssppp");
  expect(plan.getCell("B8").formula).toBeDefined();

  const roster = workbook.getWorksheet("Roster")!;
  let errors = 0;
  workbook.eachSheet((sheet) =>
    sheet.eachRow((row) => row.eachCell((cell) => void (errors += /^#[A-Z]/.test(cell.text) ? 1 : 0))),
  );
  expect(errors).toBe(0);
  expect(text(roster, "A5")).toBe("Bram Tolliver");

  const printed = pageTexts(await program.convert(bytes, "pdf")).flat();
  expect(printed.length).toBeGreaterThan(100);
  expect(printed.filter((piece) => piece.includes("###"))).toEqual([]);
  expect(bench.faults).toEqual([]);
}, 600_000);

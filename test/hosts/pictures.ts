/** Makes the README's pictures from the program as it really draws: the bench page, a written plan, the workbook. */
import { mkdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { planLifter } from "../../engine";
import { planSheets } from "../../addin/sheets";
import { toXlsx } from "../../addin/workbook/file";
import { middleweightWoman } from "../lifters";
import { BenchPage } from "./browser/bench-page";
import { SpreadsheetProgram } from "./spreadsheet/program";

const FOLDER = path.join(__dirname, "../../.pictures");

async function pictureBench(): Promise<void> {
  const bench = await BenchPage.open({ viewport: { width: 1440, height: 860 } });
  const { page } = bench;
  await bench.settle();
  await page.waitForTimeout(1500);
  await page.screenshot({ path: path.join(FOLDER, "bench.png") });
  await page.locator("#pane").screenshot({ path: path.join(FOLDER, "pane.png") });
  await page.getByRole("button", { name: /write plan/i }).click();
  await page.waitForTimeout(2500);
  await bench.settle();
  await page.screenshot({ path: path.join(FOLDER, "grid.png") });
  await bench.close();
}

async function pictureWorkbook(): Promise<void> {
  const answer = planLifter(middleweightWoman);
  if (answer.status !== "planned") throw new Error(answer.status);
  const program = await SpreadsheetProgram.start();
  const png = await program.convert(await toXlsx(planSheets(answer, []), { title: "Plan" }), "png");
  await program.stop();
  await writeFile(path.join(FOLDER, "workbook.png"), png);
}

async function main(): Promise<void> {
  await mkdir(FOLDER, { recursive: true });
  await pictureBench();
  await pictureWorkbook();
  const sizes = await Promise.all(
    ["bench", "pane", "grid", "workbook"].map(
      async (name) => `${name} ${(await readFile(path.join(FOLDER, `${name}.png`))).length}`,
    ),
  );
  console.log(`Pictures made, in bytes: ${sizes.join(", ")}`);
}

main().catch((fault: unknown) => {
  console.error(fault);
  process.exit(1);
});

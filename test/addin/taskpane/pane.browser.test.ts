/** The pane on the bench page in a real browser: typed into, chosen from, written, and judged by axe. */
import { readFileSync } from "node:fs";
import type {} from "../../../addin/workbook/bench/window";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";
import { BenchPage } from "../../hosts/browser/bench-page";

const AXE = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const NARROW = { width: 320, height: 800 } as const;

// Every test loads the page with its grid anew.
jest.setTimeout(120_000);

let bench: BenchPage;

beforeAll(async () => {
  bench = await BenchPage.open({ viewport: NARROW });
}, 180_000);

afterAll(async () => {
  await bench?.close();
});

afterEach(() => {
  expect(bench.faults).toEqual([]);
});

/** The page anew, so that no test sees what another typed. */
async function openPane(
  viewport: { width: number; height: number },
  colorScheme: "light" | "dark" = "light",
) {
  const { page } = bench;
  await page.setViewportSize(viewport);
  await page.emulateMedia({ colorScheme });
  await page.reload();
  await page.waitForFunction(() => "meetwardBench" in window);
  return page;
}

/** What axe finds wrong in the pane; asserts that it looked at all. */
async function violationsOf(page: Page): Promise<readonly string[]> {
  // Not as a script element, which the page's content policy refuses.
  await page.evaluate(AXE);
  const results = await page.evaluate(() =>
    (window as unknown as { axe: { run(selector: string): Promise<AxeResults> } }).axe.run("#pane"),
  );
  expect(results.passes.length).toBeGreaterThan(20);
  return results.violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" ")}`);
}

async function openFolds(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>("#pane details")) fold.open = true;
  });
}

const pane = (page: Page) => page.locator("#pane");
const lead = (page: Page) => pane(page).locator(".mw-lead").innerText();

/** The accessible descriptions of a field: its hint and its problems. */
function describedBy(page: Page, label: string): Promise<string> {
  return pane(page)
    .getByLabel(label)
    .evaluate((field) =>
      (field.getAttribute("aria-describedby") ?? "")
        .split(" ")
        .map((id) => document.getElementById(id)?.textContent ?? "")
        .join(" "),
    );
}

test("problems stand beside their fields as one types, and go when mended", async () => {
  const page = await openPane(NARROW);
  const squat = pane(page).getByLabel("Squat");
  await squat.fill("142,5");
  await pane(page).getByLabel("Meet date").fill("2020-01-04");
  expect(await squat.inputValue()).toBe("142,5");
  expect(await squat.getAttribute("aria-invalid")).toBe("true");
  expect(await describedBy(page, "Squat")).toMatch(/142,5.*142\.5/);
  const write = pane(page).getByRole("button", { name: "Write plan" });
  expect(await write.getAttribute("aria-disabled")).toBe("true");
  expect(await pane(page).locator("#mw-write-note").innerText()).toMatch(/Squat/);
  expect(await violationsOf(page)).toEqual([]);
  await squat.fill("142.5");
  expect(await squat.getAttribute("aria-invalid")).toBe("false");
  // The comma hid it: days are compared once every field can be read.
  expect(await describedBy(page, "Meet date")).toMatch(/2020/);
  await pane(page).getByRole("status").filter({ hasText: "Mend first" }).waitFor();
});

test("a change of unit converts what was typed and says so", async () => {
  const page = await openPane(NARROW);
  await pane(page).getByLabel("Squat").fill("100");
  await pane(page).getByRole("radio", { name: "lb" }).check();
  // 100 kg / 0.45359237 kg per lb
  expect(await pane(page).getByLabel("Squat").inputValue()).toBe("220.5");
  expect(await pane(page).locator("#mw-unit-hint").innerText()).toMatch(/converted from kg to lb/);
  await pane(page).getByRole("radio", { name: "kg" }).check();
  expect(await pane(page).getByLabel("Squat").inputValue()).toBe("100");
});

test("the runner-up chosen is shown and written, by keyboard alone", async () => {
  const page = await openPane({ width: 1280, height: 900 });
  const before = await lead(page);
  const sheetsBefore = await page.evaluate(() => window.meetwardBench.workbook.sheetNames());
  await pane(page).getByRole("radio", { checked: true, name: /meet/ }).focus();
  await page.keyboard.press("ArrowDown");
  const after = await lead(page);
  expect(after).not.toBe(before);
  await pane(page).getByRole("button", { name: "Write plan" }).focus();
  await page.keyboard.press("Enter");
  const report = pane(page).locator(".mw-wrote");
  await report.waitFor();
  const names = await page.evaluate(() => window.meetwardBench.workbook.sheetNames());
  const written = names.filter((name) => !sheetsBefore.includes(name));
  expect(written.length).toBeGreaterThan(0);
  for (const name of written) expect(await report.innerText()).toContain(name);
  const cells = await page.evaluate((name) => window.meetwardBench.workbook.readValues(name), written[0]!);
  const kinds = cells.flat().filter((cell) => cell === "deload");
  expect(kinds.length).toBeGreaterThan(0);
});

test("days that do not fit come with days that do, one press away", async () => {
  const page = await openPane(NARROW);
  const start = await pane(page).getByLabel("Start date").inputValue();
  await pane(page).getByLabel("Meet date").fill(start);
  await pane(page).getByRole("heading", { name: "No plan fits" }).waitFor();
  expect(await violationsOf(page)).toEqual([]);
  await pane(page)
    .getByRole("button", { name: /^Move the meet to/ })
    .click();
  await pane(page).locator(".mw-lead").waitFor();
  const plan = pane(page).getByRole("button", { name: "Write plan" });
  expect(await plan.getAttribute("aria-disabled")).toBe("false");
});

test("changes of the plan are told politely once typing pauses", async () => {
  const page = await openPane(NARROW);
  const live = pane(page).locator("[aria-live=polite].mw-unseen");
  expect(await live.textContent()).toBe("");
  await pane(page).getByLabel("Squat").fill("heavy");
  await live.filter({ hasText: "No plan yet. Mend first: Squat." }).waitFor({ state: "attached" });
});

test.each([
  ["light", NARROW],
  ["dark", NARROW],
  ["light", { width: 1280, height: 900 }],
] as const)("axe finds nothing with every fold open, %s at %j", async (colorScheme, viewport) => {
  const page = await openPane(viewport, colorScheme);
  await pane(page).getByLabel("Deadlift").fill("620");
  await openFolds(page);
  expect(await pane(page).locator("details").count()).toBeGreaterThan(8);
  expect(await violationsOf(page)).toEqual([]);
});

test.each([320, 360, 1280])(
  "nothing runs out of a window of %i pixels, nor into the host's corner",
  async (width) => {
    const page = await openPane({ width, height: 800 });
    await openFolds(page);
    const { overflow, inCorner } = await page.evaluate(() => {
      const root = document.getElementById("pane")!;
      const box = root.getBoundingClientRect();
      const inCorner = [...root.querySelectorAll("h1, h2, input, select, button, label, p")].filter((one) => {
        const { top, right, width } = one.getBoundingClientRect();
        const isEmpty = one.tagName === "P" && one.textContent === "";
        return width > 0 && !isEmpty && top < box.top + 32 && right > box.right - 34;
      });
      return {
        overflow: root.scrollWidth - root.clientWidth,
        inCorner: inCorner.map((one) => one.outerHTML),
      };
    });
    expect(overflow).toBeLessThanOrEqual(0);
    expect(inCorner).toEqual([]);
  },
);

/** The bench page's workbook in a real browser: what was painted is there, and stays alive. */
import type {} from "../../../addin/workbook/bench/window";
import { Workbook as IndependentReader } from "exceljs";
import type { SheetModel } from "../../../addin/sheets/model";
import { BenchPage } from "../../hosts/browser/bench-page";
import { GridHand } from "../../hosts/browser/grid-hand";
import { EVERYTHING, sheetOf } from "./bench-fixture";

jest.setTimeout(90_000);

let bench: BenchPage;

beforeAll(async () => {
  bench = await BenchPage.open({ viewport: { width: 1280, height: 800 } });
}, 180_000);

afterAll(async () => {
  await bench?.close();
});

afterEach(() => {
  expect(bench.faults.splice(0)).toEqual([]);
});

const add = (...models: SheetModel[]) =>
  bench.page.evaluate((sheets) => window.meetwardBench.workbook.addSheets(sheets), models);
const values = (sheet: string) =>
  bench.page.evaluate((name) => window.meetwardBench.workbook.readValues(name), sheet);
const sheetNames = () => bench.page.evaluate(() => window.meetwardBench.workbook.sheetNames());
const activate = (sheet: string) =>
  bench.page.evaluate((name) => window.meetwardBench.workbook.activate(name), sheet);
const snapshotOf = async (sheet: string) => {
  const models = await bench.page.evaluate(() => window.meetwardBench.snapshot());
  return models.find(({ name }) => name === sheet);
};
const type = (sheet: string, cell: string, content: string | number) =>
  bench.page.evaluate((args) => window.meetwardBench.type(...args), [sheet, cell, content] as const);

describe("a sheet with everything in it", () => {
  const name = EVERYTHING.name;
  const hand = () => new GridHand(bench.page, EVERYTHING);

  beforeAll(() => add(EVERYTHING));

  test("is read back as it was painted", async () => {
    expect(await snapshotOf(name)).toEqual(EVERYTHING);
  });

  test("is calculated", async () => {
    expect(await values(name)).toEqual([
      ["Spring meet", "", "", ""],
      ["", "", "", ""],
      ["Day", "Phase", "Kg", "Result"],
      [46000, "strength", 102.5, 250], // 102.5 + 97.5 + 50
      [46007, "peaking", 97.5, "go"],
      ["=1+1", true, 50, 51.25], // half of 102.5
      ["007", "", "", 11.39], // 102.5 / 9 = 11.3888…
      ["+heavy, -light, @home", "", "", "two\nlines"],
    ]);
  });

  test("shows its fills, and the earlier of two conditional formats", async () => {
    await activate(name);
    await bench.settle();
    expect(await hand().colourAt(2, 1)).toBe("#2F6F73");
    expect(await hand().colourAt(3, 1)).toBe("#F4C7A1"); // 102.5 is over 100
    expect(await hand().colourAt(4, 1)).toBe("#3D2C5C"); // peaking
    expect(await hand().colourAt(4, 2)).toBe("#C9D7E8"); // 97.5 is over 0 only
    expect(await hand().colourAt(7, 1)).toBe("none");
  });

  test("takes what a coach types, refuses what a validation forbids, and follows", async () => {
    await activate(name);
    await hand().typeInto(4, 2, "120");
    await hand().typeInto(4, 1, "strength");
    await expect(values(name)).resolves.toMatchObject({ 3: { 3: 272.5 }, 4: { 1: "strength", 2: 120 } });

    await hand().typeInto(5, 2, "9999");
    await bench.page.getByText("1 to 400.").waitFor();
    await bench.page.keyboard.press("Escape");
    await expect(values(name)).resolves.toMatchObject({ 5: { 2: 50 } });

    const read = await snapshotOf(name);
    expect(read?.cells).toContainEqual({ row: 4, column: 2, value: 120, style: "load" });
    expect(read?.cells).toContainEqual({ row: 3, column: 3, formula: "=SUM(C4:C6)", style: "load" });
  });
});

test("a cell that is still being typed into does not keep sheets from being added", async () => {
  await add(sheetOf("Open cell", [{ row: 0, column: 0, value: 1 }]));
  await activate("Open cell");
  await new GridHand(bench.page, sheetOf("", [])).startTyping(1, 1, "half a sen");
  await add(sheetOf("Added meanwhile", [{ row: 0, column: 0, value: "here" }]));
  expect(await values("Added meanwhile")).toEqual([["here"]]);
  expect(await values("Open cell")).toEqual([
    [1, ""],
    ["", "half a sen"],
  ]);
});

test("one step back takes away all sheets of one writing and frees their names", async () => {
  const before = await sheetNames();
  const written = {
    ...EVERYTHING,
    name: "Written",
    names: [{ ...EVERYTHING.names[0]!, name: "Written_Set" }],
  };
  await add(written, sheetOf("Written as well", [{ row: 0, column: 0, value: 1 }]));
  await activate("Written as well");
  await bench.settle();
  await new GridHand(bench.page, sheetOf("", [])).clickOn(5, 5);
  await bench.page.keyboard.press("Control+z");
  await bench.page.waitForFunction(
    async (count) => (await window.meetwardBench.workbook.sheetNames()).length === count,
    before.length,
  );
  expect(await sheetNames()).toEqual(before);
  await add(written);
  expect((await snapshotOf("Written"))?.names).toEqual(written.names);
});

test("a row that the coach inserts moves everything below it", async () => {
  const moved = { ...EVERYTHING, name: "Moved", names: [] };
  await add(moved);
  await activate("Moved");
  await new GridHand(bench.page, EVERYTHING).insertRowAbove(1);
  const down = <R extends { row: number }>(range: R): R => ({ ...range, row: range.row + 1 });
  const { validations, notes, conditionalFormats } = (await snapshotOf("Moved"))!;
  expect(validations.map(({ range }) => range)).toEqual(moved.validations.map(({ range }) => down(range)));
  expect(notes).toEqual(moved.notes.map(down));
  expect(conditionalFormats.map(({ range }) => range)).toEqual(
    moved.conditionalFormats.map(({ range }) => down(range)),
  );
  expect((await snapshotOf("Moved"))?.rowHeights).toEqual({ 0: 30, 3: 22.5 });
  expect((await values("Moved"))[4]).toEqual([46000, "strength", 102.5, 250]);
});

describe("taken names", () => {
  test("of a sheet are refused whatever the capitals, and nothing is written", async () => {
    await add(sheetOf("Taken", [{ row: 0, column: 0, value: "first" }]));
    const before = await sheetNames();
    await expect(add(sheetOf("Free", []), sheetOf("tAKEN", []))).rejects.toThrow(
      'The sheet name "tAKEN" is taken',
    );
    await expect(add(sheetOf("Twice", []), sheetOf("Twice", []))).rejects.toThrow(
      'The sheet name "Twice" is taken',
    );
    expect(await sheetNames()).toEqual(before);
    expect(await values("Taken")).toEqual([["first"]]);
  });

  test("of a range are refused", async () => {
    const before = await sheetNames();
    const names = [{ name: "top_set", range: { row: 0, column: 0, rows: 1, columns: 1 } }];
    await expect(add({ ...sheetOf("Named", []), names })).rejects.toThrow(
      'The range name "top_set" is taken',
    );
    expect(await sheetNames()).toEqual(before);
  });

  test("a fault in one sheet leaves out all of them", async () => {
    const before = await sheetNames();
    const faulty = sheetOf("Faulty", [{ row: 0, column: 0, value: "x", style: "misspelt" }]);
    await expect(add(sheetOf("Sound", []), faulty)).rejects.toThrow('"misspelt", which the sheet lacks');
    expect(await sheetNames()).toEqual(before);
  });
});

describe("worksheet functions", () => {
  beforeAll(async () => {
    await bench.page.evaluate(() =>
      window.meetwardBench.registerFunctions({
        TWICE: (range: number[][], label: string | null) =>
          range.map(([value]) => [label === null ? "no label" : label, value! * 2]),
        FAIL: () => {
          throw new Error("the plates do not add up");
        },
        NOTHING: () => [[null]],
      }),
    );
    await add(
      sheetOf("Functions", [
        { row: 0, column: 0, value: 60 },
        { row: 0, column: 1, formula: "=MEETWARD.TWICE(A1:A2,)" },
        { row: 1, column: 0, value: 70 },
        { row: 3, column: 0, formula: "=MEETWARD.FAIL(A1)" },
        { row: 4, column: 0, formula: "=C2+1" },
        { row: 5, column: 0, formula: '=MEETWARD.TWICE(A1:A1,"kg")' },
        { row: 6, column: 0, formula: "=MEETWARD.NOTHING()" },
      ]),
    );
  });

  test("spill, take blanks for omitted arguments and show a fault as a message", async () => {
    expect(await values("Functions")).toEqual([
      [60, "no label", 120],
      [70, "no label", 140],
      ["", "", ""],
      ["#VALUE! the plates do not add up", "", ""],
      [141, "", ""],
      ["kg", 120, ""],
    ]);
  });

  test("recalculate after an edit, also what refers to a spilled cell", async () => {
    await type("Functions", "A2", 71.5);
    expect(await values("Functions")).toMatchObject({ 1: { 2: 143 }, 4: { 0: 144 } });
  });

  test("become their values in a snapshot, native formulas stay", async () => {
    await type("Functions", "A2", 80);
    expect((await snapshotOf("Functions"))?.cells).toEqual([
      { row: 0, column: 0, value: 60 },
      { row: 0, column: 1, value: "no label" },
      { row: 0, column: 2, value: 120 },
      { row: 1, column: 0, value: 80 },
      { row: 1, column: 1, value: "no label" },
      { row: 1, column: 2, value: 160 },
      { row: 3, column: 0, value: "#VALUE! the plates do not add up" },
      { row: 4, column: 0, formula: "=C2+1" },
      { row: 5, column: 0, value: "kg" },
      { row: 5, column: 1, value: 120 },
    ]);
  });
});

test("the table view says what the grid draws, and follows an edit", async () => {
  await add(
    sheetOf("Spoken", [
      { row: 0, column: 0, value: "Squat" },
      { row: 0, column: 1, value: 140 },
      { row: 1, column: 1, formula: "=B1/2" },
    ]),
  );
  await activate("Spoken");
  await bench.page.getByRole("button", { name: "Table view" }).click();
  await bench.page.getByRole("table", { name: "Spoken" }).waitFor();
  await type("Spoken", "B1", 150);
  await bench.page.getByRole("cell", { name: "75", exact: true }).waitFor();
  expect(await bench.page.getByRole("row").allInnerTexts()).toEqual(["\tA\tB", "1\tSquat\t150", "2\t\t75"]);
  await bench.page.getByRole("button", { name: "Table view" }).click();
  expect(await bench.page.getByRole("table", { name: "Spoken" }).isVisible()).toBe(false);
});

test("the downloaded file holds what is on the page, the add-in's own functions as their values", async () => {
  await add({ ...sheetOf("Downloaded", [{ row: 0, column: 0, formula: "=6*7" }]) });
  const [download] = await Promise.all([
    bench.page.waitForEvent("download"),
    bench.page.getByRole("button", { name: "Download workbook" }).click(),
  ]);
  expect(download.suggestedFilename()).toBe("meetward-plan.xlsx");
  const file = new IndependentReader();
  await file.xlsx.readFile((await download.path())!);
  expect(file.worksheets.map(({ name }) => name)).toEqual(await sheetNames());
  expect(file.getWorksheet("Downloaded")!.getCell("A1").formula).toBe("6*7");
  const roster = file.getWorksheet("Roster")!;
  const spilled = await values("Roster");
  const formulas: string[] = [];
  let compared = 0;
  roster.eachRow((row, rowNumber) =>
    row.eachCell((cell, columnNumber) => {
      if (cell.formula) formulas.push(cell.formula);
      if (cell.isMerged && cell.master !== cell) return;
      if (typeof cell.value !== "string") return;
      expect(cell.value).toBe(spilled[rowNumber - 1]?.[columnNumber - 1]);
      compared++;
    }),
  );
  expect(compared).toBeGreaterThan(50);
  expect(formulas).toEqual([]);
});

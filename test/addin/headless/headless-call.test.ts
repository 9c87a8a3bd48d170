/** Calls that are no good, text for the terminal, and the workbook. */
import { existsSync, mkdirSync, readFileSync } from "node:fs";
import { spawnSync } from "node:child_process";
import { join, resolve } from "node:path";
import ExcelJS from "exceljs";
import { findJsonFault } from "../../../addin/headless/json-fault";
import { lateStarter, smallMan } from "../../lifters/index";
import { call, folder, put, removeFolder } from "./call";

afterAll(removeFolder);

const request = () => put(JSON.stringify(smallMan), ".json");

test("calls that are not understood: exit code 2 and a message, nothing on stdout", async () => {
  mkdirSync(join(folder, "a-folder.json"));
  const wrong: readonly (readonly [readonly string[], RegExp])[] = [
    [[], /No file given/],
    [["--json"], /No file given/],
    [[request(), request()], /Given 2 files; allowed: one/],
    [[request(), "--yaml"], /--yaml/],
    [[request(), "--out"], /--out/],
    [[request(), "--out", "plan.pdf"], /given "plan\.pdf"; allowed: a name ending in \.xlsx/],
    [[request(), "--force"], /--force goes with --out/],
    [[join(folder, "none.json")], /none\.json: there is no such file/],
    [[join(folder, "a-folder.json")], /it is a folder/],
    [[put("x", ".txt")], /given a \.txt file; allowed: \.json, \.csv/],
    [[put("x", "")], /without an ending/],
    [[put(Buffer.from([0x50, 0x4b, 3, 4, 0, 0]), ".csv")], /no text file/],
    [[put("5", ".json")], /single value; allowed: one request/],
    [[put("", ".json")], /line 1, column 1: the end of the file/],
    [[put('[\n  {"lifter": "Ann",}\n]', ".json")], /line 2, column 20: "}" cannot stand here/],
    [[put('a,b\n"x', ".csv")], /line 2: a cell begins with a quote/],
  ];
  for (const [args, message] of wrong) {
    const told = await call(args);
    expect(told.err).toMatch(message);
    expect(told).toMatchObject({ code: 2, out: "" });
  }
});

// Line and column of the first character that cannot stand where it does, counted by hand.
test.each([
  ["{", 1, 2, "the end of the file"],
  ["[1,\n2", 2, 2, "the end of the file"],
  ["[1,]", 1, 4, '"]"'],
  ['{"a":1,}', 1, 8, '"}"'],
  ["{a:1}", 1, 2, '"a"'],
  ['{"a" 1}', 1, 6, '"1"'],
  ['{"a":1 "b":2}', 1, 8, '"""'],
  ["{'a':1}", 1, 2, '"\'"'],
  ["[1}", 1, 3, '"}"'],
  ["[01]", 1, 2, '"0"'],
  ["[1.]", 1, 2, '"1"'],
  ["{} {}", 1, 4, '"{"'],
  ['["a\nb"]', 1, 2, '"""'],
  ["[tru]", 1, 2, '"t"'],
  ["[\r\n\r\n  nope]", 3, 3, '"n"'],
  ["]", 1, 1, '"]"'],
])("where %j stops being JSON", (text, line, column, found) => {
  expect(() => JSON.parse(text)).toThrow();
  expect(findJsonFault(text)).toEqual({ line, column, found });
});

test("text for the terminal: a table a lifter", async () => {
  const { code, out } = await call([
    put(JSON.stringify([smallMan, lateStarter, { ...smallMan, lifter: null, sex: "x" }]), ".json"),
  ]);
  expect(code).toBe(0);
  const parts = out.split("\n\n");
  expect(parts).toHaveLength(4);
  expect(parts[0]).toMatch(/^Row 1: Teo Lindqvist\n/);
  expect(parts[0]).toMatch(/Week +Starts +To meet +Kind +Squat +Bench +Deadlift\n/);
  expect(parts[0]).toMatch(/ 0 +meet +peaking +peaking +peaking$/);
  expect(parts[1]).toMatch(/^Row 2: Petra Sandoval\n[^]*No plan fits/);
  expect(parts[2]).toMatch(/^Row 3: no name\n {2}Sex: given "x"; allowed: female or male\./);
  expect(parts[3]).toMatch(/see a clinician/);
});

test("the usage", async () => {
  expect(await call(["--help"])).toMatchObject({
    code: 0,
    out: expect.stringMatching(/--out FILE/),
    err: "",
  });
});

describe("the workbook", () => {
  const out = join(folder, "plans.xlsx");
  const roster = () =>
    put(JSON.stringify([smallMan, lateStarter, { ...smallMan, lifter: "=1+1" }, { lifter: "Bad" }]), ".json");

  test("an overview of all, then each plan's sheets, as an independent program reads them", async () => {
    const told = await call([roster(), "--out", out]);
    expect(told).toMatchObject({ code: 0, err: `Wrote ${out}.\n` });
    const workbook = new ExcelJS.Workbook();
    await workbook.xlsx.readFile(out);
    expect(workbook.worksheets.map(({ name }) => name)).toEqual([
      "Overview",
      "Plan Teo Lindqvist",
      "Reasons Teo Lindqvist",
      "Plan =1+1",
      "Reasons =1+1",
    ]);
    const texts: string[] = [];
    workbook.getWorksheet("Overview")!.eachRow((row) => texts.push(String(row.getCell(2).value)));
    expect(texts).toEqual(expect.arrayContaining(["Teo Lindqvist", "Petra Sandoval", "=1+1", "Bad"]));
  });

  test("an existing file is left alone, unless --force", async () => {
    const before = readFileSync(out);
    const told = await call([roster(), "--out", out]);
    expect(told).toMatchObject({ code: 2, out: "" });
    expect(told.err).toMatch(/it exists already and is left as it is/);
    expect(readFileSync(out).equals(before)).toBe(true);
    expect((await call([request(), "--out", out, "--force"])).code).toBe(0);
    expect(readFileSync(out).equals(before)).toBe(false);
  });

  test("what stands in the way of writing", async () => {
    const nowhere = join(folder, "no", "where.xlsx");
    const lost = await call([request(), "--out", nowhere]);
    expect(lost).toMatchObject({ code: 2, out: "" });
    expect(lost.err).toMatch(/there is no folder/);
    const none = join(folder, "none.xlsx");
    const told = await call([put("[]", ".json"), "--out", none]);
    expect(told).toMatchObject({ code: 0, out: "[]\n" });
    expect(told.err).toMatch(/no workbook is written/);
    expect(existsSync(none)).toBe(false);
  });
});

test("as a program of its own: the exit code, and nothing but JSON on stdout", () => {
  const root = resolve(__dirname, "../../..");
  const plan = (...args: string[]) =>
    spawnSync(process.execPath, [join(root, "node_modules/tsx/dist/cli.mjs"), "addin/headless.ts", ...args], {
      cwd: root,
      encoding: "utf8",
    });
  const good = plan(request(), "--json");
  expect(good.stderr).toBe("");
  expect(good.status).toBe(0);
  expect(JSON.parse(good.stdout).status).toBe("planned");
  const bad = plan(join(folder, "none.csv"));
  expect(bad).toMatchObject({ status: 2, stdout: "" });
  expect(bad.stderr).toMatch(/there is no such file/);
}, 120_000);

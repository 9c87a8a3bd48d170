import { faultsOf } from "./sound-model";
import { demoRosterSheet, overviewSheet, planSheets } from "../../../addin/sheets";
import type { Cell, SheetModel } from "../../../addin/sheets/model";
import { countLines } from "../../../addin/sheets/text-height";
import { daySerial, problemText } from "../../../addin/sheets/words";
import { planLifter, type Answer, type Planned } from "../../../engine";
import { beginnerMan, LIFTERS, lateStarter, longHorizon, newLightWoman, tiredGiant } from "../../lifters";

const planned = (request: object): Planned => {
  const answer = planLifter(request);
  if (answer.status !== "planned") throw new Error(JSON.stringify(answer));
  return answer;
};
const PLANNED = Object.values(LIFTERS).flatMap((lifter) => {
  const answer: Answer = planLifter(lifter);
  return answer.status === "planned" ? [answer] : [];
});
const gridOf = (request: object): SheetModel => planSheets(planned(request), [])[0]!;
const at = (model: SheetModel, row: number, column: number): Cell => {
  const cell = model.cells.find((one) => one.row === row && one.column === column);
  if (!cell) throw new Error(`no cell ${row}, ${column}`);
  return cell;
};
const find = (model: SheetModel, value: string): Cell => {
  const cell = model.cells.find((one) => one.value === value);
  if (!cell) throw new Error(`no cell holds ${value}`);
  return cell;
};

/** Names a sheet must survive. */
const NAMES = [
  "=1+1",
  '+"x"',
  "@home",
  "-5",
  "n".repeat(300),
  "👩‍👩‍👧".repeat(40),
  "a\u0000b\nc",
  "' quoted '",
  "",
];

const EVERY_MODEL: readonly SheetModel[] = [
  ...PLANNED.flatMap((answer) => planSheets(answer, [])),
  ...NAMES.flatMap((lifter) => planSheets(planned({ ...beginnerMan, lifter, squatKg: 1200 }), ["Plan"])),
  demoRosterSheet(),
  overviewSheet(
    [...Object.values(LIFTERS), { lifter: "=x" }, {}].map((request, index) => ({
      row: index + 5,
      lifter: String((request as { lifter?: unknown }).lifter ?? ""),
      answer: planLifter(request),
    })),
    [],
  ),
  overviewSheet([], ["overview"]),
];

test("every model is sound: no cell twice, no merge over another, no style without a look, all of it printed", () => {
  expect(EVERY_MODEL.length).toBeGreaterThan(30);
  for (const model of EVERY_MODEL)
    expect({ name: model.name, faults: faultsOf(model) }).toEqual({ name: model.name, faults: [] });
});

test("the check of models finds what is wrong", () => {
  const model = gridOf(beginnerMan);
  const spoilt: SheetModel = {
    ...model,
    name: "a/b",
    cells: [...model.cells, { row: 0, column: 0, value: 1, formula: "1", style: "none" }],
    merges: [...model.merges, model.merges[0]!],
  };
  const faults = faultsOf(spoilt).join("\n");
  for (const fault of [
    "A1 twice",
    "value and formula",
    "without",
    "no style none",
    "A1 merged twice",
    "name a/b",
  ]) {
    expect(faults).toContain(fault);
  }
});

test("models are plain data", () => {
  for (const model of EVERY_MODEL) expect(JSON.parse(JSON.stringify(model))).toEqual(model);
});

test("a name is always a value, never a formula, and no formula holds it", () => {
  for (const lifter of ["=1+1", "@SUM(A1)", "-5", '"&A1&"']) {
    for (const model of planSheets(planned({ ...beginnerMan, lifter }), [])) {
      for (const cell of model.cells)
        if (cell.formula !== undefined) expect(cell.formula).not.toContain(lifter);
    }
    expect(find(gridOf({ ...beginnerMan, lifter }), lifter).formula).toBeUndefined();
  }
});

test("one row a week, with the meet day as the only date that is typed in", () => {
  const answer = planned(longHorizon);
  const model = gridOf(longHorizon);
  const first = find(model, "Week").row + 1;
  answer.plan.weeks.forEach((week, index) => {
    const row = first + index;
    expect(at(model, row, 5).value).toBe(week.kind);
    expect([6, 7, 8].map((column) => at(model, row, column).value)).toEqual(
      week.phase === null ? [undefined, undefined, undefined] : Object.values(week.phase),
    );
    for (const column of [0, 1, 2, 3, 4, 9]) expect(at(model, row, column).formula).toMatch(/^=/);
  });
  const dates = model.cells.filter((cell) => cell.style === "inputDate");
  expect(dates.map((cell) => cell.value)).toEqual([daySerial("2027-06-26")]);
});

test("formulas of the first week, as they stand in the cells", () => {
  const model = gridOf(tiredGiant);
  const row = find(model, "Week").row + 1;
  expect(row).toBe(7);
  expect([0, 1, 2, 3, 4].map((column) => at(model, row, column).formula)).toEqual([
    "=ROWS(F$8:F8)",
    '=$G$3-MOD(WEEKDAY($G$3)-(SEARCH(LEFT($I$3,3),"sunmontuewedthufrisat")+2)/3,7)-7*D8',
    "=MIN(B8+6,$G$3)",
    "=ROWS(F8:F$19)-1",
    '=IF(F8="bridge","",COUNTIF(F$7:F7,"deload")+1)',
  ]);
});

test("totals and shares cover every week and nothing else", () => {
  const model = gridOf(tiredGiant);
  const head = find(model, "Weeks by phase").row;
  const formulas = (row: number) => [6, 7, 8].map((column) => at(model, row, column).formula);
  expect(formulas(head + 1)).toEqual(["G", "H", "I"].map((c) => `=COUNTIF(${c}$8:${c}$19,"hypertrophy")`));
  expect(formulas(head + 2)).toEqual(["G", "H", "I"].map((c) => `=COUNTIF(${c}$8:${c}$19,"strength")`));
  expect(formulas(head + 3)).toEqual(["G", "H", "I"].map((c) => `=COUNTIF(${c}$8:${c}$19,"peaking")`));
  expect(formulas(head + 4)[0]).toBe('=ROWS($F$8:$F$19)-COUNTIF($F$8:$F$19,"bridge")');
  expect(formulas(head + 5)).toEqual(["G", "H", "I"].map((c) => `=IF(${c}$25=0,"",${c}22/${c}$25)`));
  expect(head + 4 + 1).toBe(25);
});

test("only functions that every spreadsheet program at hand knows", () => {
  const known = /^(AND|COUNTIF|IF|LEFT|MAX|MIN|MOD|OR|ROW|ROWS|SEARCH|SUMPRODUCT|TRIM|WEEKDAY)$/;
  const used = EVERY_MODEL.flatMap((model) => model.cells.flatMap((cell) => cell.formula ?? []))
    .filter((formula) => !formula.startsWith("=MEETWARD."))
    .flatMap((formula) =>
      [...formula.replace(/"[^"]*"/g, "").matchAll(/([A-Z.]+)\(/g)].map((match) => match[1]!),
    );
  expect(used.length).toBeGreaterThan(500);
  expect([...new Set(used)].filter((name) => !known.test(name))).toEqual([]);
});

test("kinds and phases are lists, and each phase has its colour", () => {
  const model = gridOf(longHorizon);
  const lists = model.validations.flatMap((one) => (one.kind === "list" ? [one.values] : []));
  expect(lists).toContainEqual(["bridge", "hard", "deload", "meet"]);
  expect(lists).toContainEqual(["hypertrophy", "strength", "peaking"]);
  const worded = model.conditionalFormats.flatMap((one) => (one.kind === "textIs" ? [one.text] : []));
  expect(worded).toEqual(["hypertrophy", "strength", "peaking"]);
  const lifts = model.conditionalFormats[0]!.range;
  expect(lifts).toEqual({ row: 7, column: 6, rows: planned(longHorizon).plan.weeks.length, columns: 3 });
  for (const one of model.conditionalFormats) {
    if (one.kind === "formula")
      expect(one.range.column + one.range.columns <= 6 || one.range.column >= 9).toBe(true);
  }
});

test("all cautions stand in full on the week grid, and the short one at its head", () => {
  const model = gridOf({ ...longHorizon, squatKg: 1200 });
  expect(at(model, 1, 0).formula).toContain("does not judge health");
  const text = model.cells.map((cell) => String(cell.value ?? "")).join("\n");
  for (const words of [
    "loss of bladder or bowel control",
    "federation's current rules",
    "Look again. Squat: given 1200",
  ]) {
    expect(text).toContain(words);
  }
});

test("reasons hold every decision and every other plan, in rows high enough", () => {
  const answer = planned(newLightWoman);
  const [, model] = planSheets(answer, []);
  const firstColumn = model!.cells.filter((cell) => cell.column === 0 && cell.style === "boxBold");
  expect(firstColumn).toHaveLength(answer.decisions.length + answer.runnersUp.length);
  for (const cell of model!.cells) {
    if (typeof cell.value !== "string" || cell.style !== "box") continue;
    const lines = countLines(cell.value, model!.columns[cell.column]!.width);
    expect(model!.rowHeights[cell.row]).toBeGreaterThanOrEqual(lines * 15);
  }
});

test("lines are counted by words, words longer than a line broken", () => {
  expect(countLines("one two three", 100)).toBe(1);
  expect(countLines("one two three", 6)).toBe(3);
  expect(countLines("x".repeat(25), 11)).toBe(3);
  expect(countLines("a\nb\nc", 50)).toBe(3);
});

test("the overview says of each lifter what came out or what is wrong", () => {
  const wrong = planLifter({ ...beginnerMan, sex: "", bodyweightKg: "abc" });
  const model = overviewSheet(
    [
      { row: 5, lifter: "Caleb", answer: planned(beginnerMan) },
      { row: 6, lifter: null, answer: wrong },
      { row: 7, lifter: "=Petra", answer: planLifter(lateStarter) },
    ],
    ["Overview"],
  );
  expect(model.name).toBe("Overview (2)");
  const row = (index: number) =>
    model.cells.filter((cell) => cell.row === 3 + index).map((cell) => cell.value);
  expect(row(0).slice(0, 5)).toEqual([5, "Caleb", "planned", "beginner", 5]);
  expect(row(1).slice(0, 3)).toEqual([6, "Unnamed lifter", "not read"]);
  expect(row(1).at(-1)).toBe(wrong.problems.map(problemText).join("\n"));
  expect(row(2).slice(0, 3)).toEqual([7, "=Petra", "does not fit"]);
  expect(row(2).at(-1)).toContain("The same start fits a meet on");
});

import type { SheetModel } from "../../../addin/sheets/model";
import type { Planned } from "../../../engine/index";
import { openForm } from "../../../addin/taskpane/state/form-state";
import { showPlan } from "../../../addin/taskpane/state/shown";
import { listNames, writePlan } from "../../../addin/taskpane/state/write-plan";
import type { Workbook } from "../../../addin/workbook/port";

const shown = showPlan(openForm("2026-11-25"));
const answer = (shown as { answer: Planned }).answer;

/** A workbook that only remembers; single calls may be replaced to refuse. */
function rememberingWorkbook(replaced: Partial<Workbook> = {}) {
  const names: string[] = ["Roster"];
  const active: string[] = [];
  const workbook: Workbook = {
    sheetNames: async () => [...names],
    addSheets: async (models: readonly SheetModel[]) => {
      for (const { name } of models) {
        if (names.includes(name)) throw new Error(`A sheet named ${name} exists.`);
        names.push(name);
      }
    },
    activate: async (name) => void active.push(name),
    readValues: async () => [],
    ...replaced,
  };
  return { names, active, workbook };
}

const refuse = (text: string) => async (): Promise<never> => {
  throw new Error(text);
};

test("writes new sheets, shows the first and names each", async () => {
  const { names, active, workbook } = rememberingWorkbook();
  const report = await writePlan(workbook, answer);
  const written = names.slice(1);
  expect(written.length).toBeGreaterThan(0);
  expect(active).toEqual([written[0]]);
  expect(report.kind).toBe("wrote");
  for (const name of written) expect((report as { text: string }).text).toContain(`“${name}”`);
});

test("writing twice adds sheets beside the first ones and overwrites none", async () => {
  const { names, workbook } = rememberingWorkbook();
  await writePlan(workbook, answer);
  const once = names.length;
  expect((await writePlan(workbook, answer)).kind).toBe("wrote");
  expect(names.length - once).toBe(once - 1);
  expect(new Set(names).size).toBe(names.length);
});

test("a refusal of the workbook is told in its words, with nothing written", async () => {
  const { workbook } = rememberingWorkbook({ addSheets: refuse("The workbook is protected.") });
  expect(await writePlan(workbook, answer)).toEqual({
    kind: "refused",
    text: "Nothing was written. The workbook refused: The workbook is protected.",
  });
});

test("sheets that were written are named even when the workbook does not switch to them", async () => {
  const { names, workbook } = rememberingWorkbook({ activate: refuse("Finish editing the cell first.") });
  const report = await writePlan(workbook, answer);
  expect(report).toMatchObject({ kind: "wrote" });
  expect((report as { text: string }).text).toContain(names[1]);
  expect((report as { text: string }).text).toContain("Finish editing the cell first.");
});

test("a fault of ours on the way is told as ours", async () => {
  const { names, workbook } = rememberingWorkbook();
  const report = await writePlan(workbook, { ...answer, plan: null as never });
  expect(report).toMatchObject({ kind: "fault" });
  expect(names).toEqual(["Roster"]);
});

test.each([
  [["A"], "“A”"],
  [["A", "B"], "“A” and “B”"],
  [["A", "B", "C"], "“A”, “B” and “C”"],
])("lists %p", (names, text) => {
  expect(listNames(names)).toBe(text);
});

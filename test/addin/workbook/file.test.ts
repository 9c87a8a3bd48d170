/** The workbook as a file: read back by an independent reader, and opened in a real spreadsheet program. */
import type ExcelJS from "exceljs";
import { FileWorkbook, toXlsx } from "../../../addin/workbook/file";
import { SpreadsheetProgram, readWorkbook, shownValue } from "../../hosts/spreadsheet/program";
import { EVERYTHING, sheetOf } from "./bench-fixture";

let sheet: ExcelJS.Worksheet;
let workbook: ExcelJS.Workbook;
let bytes: Uint8Array;

beforeAll(async () => {
  bytes = await toXlsx([EVERYTHING, sheetOf("Second", [{ row: 0, column: 0, value: 1 }])], {
    title: "Everything",
  });
  workbook = await readWorkbook(bytes);
  sheet = workbook.worksheets[0]!;
});

describe("read by exceljs", () => {
  test("sheets, values and formulas", () => {
    expect(workbook.worksheets.map((one) => one.name)).toEqual(["Everything, O'Brien", "Second"]);
    expect(sheet.getCell("C4").value).toBe(102.5);
    expect(sheet.getCell("B6").value).toBe(true);
    expect(sheet.getCell("D4").formula).toBe("SUM(C4:C6)");
    expect(sheet.getCell("D5").formula).toBe('IF(B6,"go","wait")');
    expect(sheet.getCell("D8").value).toBe("two\nlines");
  });

  test("text of a person is text, whatever it begins with", () => {
    for (const [address, text] of [
      ["A6", "=1+1"],
      ["A7", "007"],
      ["A8", "+heavy, -light, @home"],
    ] as const) {
      expect(sheet.getCell(address).value).toBe(text);
      expect(sheet.getCell(address).formula).toBeUndefined();
    }
  });

  test("a date is a number under a date format: 46000 is 2025-12-09", () => {
    expect((sheet.getCell("A4").value as Date).toISOString().slice(0, 10)).toBe("2025-12-09");
    expect(sheet.getCell("A4").numFmt).toBe("yyyy-mm-dd");
  });

  test("looks, widths, heights, merges, frozen panes", () => {
    expect(sheet.getCell("A1").font).toMatchObject({ bold: true, size: 16, color: { argb: "FF0B3C49" } });
    expect(sheet.getCell("A3").fill).toMatchObject({
      type: "pattern",
      pattern: "solid",
      fgColor: { argb: "FF2F6F73" },
    });
    expect(sheet.getCell("A3").alignment).toMatchObject({ horizontal: "center", vertical: "middle" });
    expect(sheet.getCell("A3").border.top).toMatchObject({ style: "thin", color: { argb: "FF1D4547" } });
    expect(sheet.getCell("B7").alignment).toMatchObject({ wrapText: true, vertical: "top" });
    expect([1, 2, 3, 4].map((column) => sheet.getColumn(column).width)).toEqual([20, 12.5, 9, 16]);
    expect([sheet.getRow(1).height, sheet.getRow(3).height]).toEqual([30, 22.5]);
    expect(sheet.getCell("C1").master.address).toBe("A1");
    expect(sheet.views[0]).toMatchObject({ state: "frozen", xSplit: 1, ySplit: 3 });
  });

  test("names, validations, conditional formats, notes", () => {
    const names = workbook.definedNames.model.filter(({ name }) => !name.startsWith("_xlnm"));
    expect(names.map(({ name }) => name).sort()).toEqual(["All_Sets", "Top_Set"]);
    expect(sheet.getCell("B4").dataValidation).toMatchObject({
      type: "list",
      formulae: ['"hypertrophy,strength,peaking"'],
      error: "Allowed: a phase.",
      prompt: "Choose a phase.",
    });
    expect(sheet.getCell("C6").dataValidation).toMatchObject({
      type: "whole",
      operator: "between",
      formulae: [1, 400],
    });
    const formats = (
      sheet as unknown as { conditionalFormattings: { ref: string; rules: { priority: number }[] }[] }
    ).conditionalFormattings;
    const rules = formats.flatMap(({ ref, rules: own }) => own.map((rule) => ({ ref, ...rule })));
    expect(rules.sort((a, b) => a.priority - b.priority)).toMatchObject([
      { ref: "B4:B5", type: "cellIs", operator: "equal", formulae: ['"peaking"'] },
      { ref: "B4:C5", type: "expression", formulae: ["$C4>100"] },
      { ref: "B4:C5", type: "expression", formulae: ["$C4>0"] },
    ]);
    expect(JSON.stringify(sheet.getCell("C3").note)).toContain("The bar included.");
  });

  test("print set-up, with the sheet's name quoted where it must be", () => {
    expect(sheet.pageSetup).toMatchObject({
      orientation: "landscape",
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
    });
    expect(sheet.pageSetup.printArea).toBe("A1:D8");
    expect(sheet.pageSetup.printTitlesRow).toBe("3:3");
    expect(sheet.headerFooter.oddFooter).toBe("Page &P");
  });
});

describe("what a file refuses", () => {
  test("the add-in's own functions", async () => {
    const model = sheetOf("Own", [{ row: 0, column: 0, formula: "=MEETWARD.LEVEL(A1:B2)" }]);
    await expect(toXlsx([model], { title: "" })).rejects.toThrow(/A file cannot hold =MEETWARD\.LEVEL/);
  });
  test.each(["", "x".repeat(32), "a/b", "what?", "[1]", "'quoted'"])("the sheet name %p", async (name) => {
    await expect(new FileWorkbook().addSheets([sheetOf(name, [])])).rejects.toThrow(/cannot name a sheet/);
  });
  test("a taken name, in any case, and then nothing is added", async () => {
    const file = new FileWorkbook();
    await file.addSheets([sheetOf("Plan", [])]);
    await expect(file.addSheets([sheetOf("New", []), sheetOf("PLAN", [])])).rejects.toThrow(
      /"PLAN" is taken/,
    );
    expect(await file.sheetNames()).toEqual(["Plan"]);
  });
});

test("newer functions are stored under their prefix, but not inside text", async () => {
  const formula = '=IFS(A1>0,"IFS(x)",TRUE,TEXTJOIN(",",TRUE,A1:A2))';
  const written = await readWorkbook(
    await toXlsx([sheetOf("New", [{ row: 0, column: 1, formula }])], { title: "" }),
  );
  expect(written.worksheets[0]!.getCell("B1").formula).toBe(
    '_xlfn.IFS(A1>0,"IFS(x)",TRUE,_xlfn.TEXTJOIN(",",TRUE,A1:A2))',
  );
});

test("the spreadsheet program calculates the formulas", async () => {
  const program = await SpreadsheetProgram.start();
  try {
    const opened = (await program.recalculate(bytes)).worksheets[0]!;
    // By hand: 102.5 + 97.5 + 50; TRUE; 102.5 / 2; 102.5 / 9 to two places; 46000 + 7.
    expect(shownValue(opened.getCell("D4"))).toBe(250);
    expect(shownValue(opened.getCell("D5"))).toBe("go");
    expect(shownValue(opened.getCell("D6"))).toBe(51.25);
    expect(shownValue(opened.getCell("D7"))).toBe(11.39);
    expect((shownValue(opened.getCell("A5")) as Date).toISOString().slice(0, 10)).toBe("2025-12-16");
    expect(shownValue(opened.getCell("A6"))).toBe("=1+1");
  } finally {
    await program.stop();
  }
}, 120_000);

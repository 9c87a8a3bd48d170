/** The workbook as a file, read back by a library that had no part in writing it. */
import ExcelJS from "exceljs";
import { FileWorkbook, toXlsx } from "../../../addin/workbook/file";
import type { Cell, SheetModel } from "../../../addin/sheets/model";
import { readWorkbook } from "../../hosts/spreadsheet/program";
import { EVERYTHING, sheetOf } from "./bench-fixture";
import { describeWorkbookContract } from "./contract";

const written = async (...models: readonly SheetModel[]): Promise<ExcelJS.Workbook> =>
  readWorkbook(await toXlsx(models, { title: "Everything" }));

describeWorkbookContract(
  "the file",
  async () => {
    const workbook = new FileWorkbook();
    const read = async () => readWorkbook(await workbook.toXlsx({ title: "Contract" }));
    return {
      workbook,
      contents: async (sheetName) => contentsOf((await read()).getWorksheet(sheetName)!),
      rangeOf: async (name) => (await read()).definedNames.getRanges(name).ranges[0],
    };
  },
  { calculates: false },
);

function contentsOf(sheet: ExcelJS.Worksheet): Cell[] {
  const cells: Cell[] = [];
  sheet.eachRow((row) =>
    row.eachCell((cell) => {
      const place = { row: cell.fullAddress.row - 1, column: cell.fullAddress.col - 1 };
      if (cell.type === ExcelJS.ValueType.Formula) cells.push({ ...place, formula: `=${cell.formula}` });
      else cells.push({ ...place, value: plain(cell) });
    }),
  );
  return cells;
}

function plain(cell: ExcelJS.Cell): string | number | boolean {
  if (cell.type === ExcelJS.ValueType.RichText) return cell.text;
  if (typeof cell.value === "string" || typeof cell.value === "number" || typeof cell.value === "boolean") {
    return cell.value;
  }
  throw new Error(`${cell.address} is neither text, number nor truth but of type ${cell.type}`);
}

describe("a sheet with everything in it", () => {
  let workbook: ExcelJS.Workbook;
  let sheet: ExcelJS.Worksheet;

  beforeAll(async () => {
    workbook = await written(EVERYTHING, sheetOf("Second", [{ row: 0, column: 0, value: 1 }]));
    sheet = workbook.worksheets[0]!;
  });

  test("sheets, title, values and formulas", () => {
    expect(workbook.worksheets.map((one) => one.name)).toEqual(["Everything, O'Brien", "Second"]);
    expect(workbook.title).toBe("Everything");
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
      expect(sheet.getCell(address).type).toBe(ExcelJS.ValueType.String);
      expect(sheet.getCell(address).value).toBe(text);
    }
  });

  test("a date is a number under a date format: 46000 is 2025-12-09", () => {
    expect((sheet.getCell("A4").value as Date).toISOString().slice(0, 10)).toBe("2025-12-09");
    expect(sheet.getCell("A4").numFmt).toBe("yyyy-mm-dd");
  });

  test("looks", () => {
    expect(sheet.getCell("A1").font).toMatchObject({ bold: true, size: 16, color: { argb: "FF0B3C49" } });
    expect(sheet.getCell("B4").font?.bold).toBeFalsy();
    const solid = (argb: string) => ({ type: "pattern", pattern: "solid", fgColor: { argb } });
    expect(sheet.getCell("A3").fill).toMatchObject(solid("FF2F6F73"));
    expect(sheet.getCell("B7").fill).toMatchObject(solid("FFDCE9E6")); // blank, and coloured all the same
    expect(sheet.getCell("B7").font).toMatchObject({ italic: true, size: 11, name: "Calibri" });
    expect(sheet.getCell("A3").alignment).toMatchObject({ horizontal: "center", vertical: "middle" });
    expect(sheet.getCell("C4").alignment).toMatchObject({ horizontal: "right", vertical: "bottom" });
    expect(sheet.getCell("B7").alignment).toMatchObject({ wrapText: true, vertical: "top" });
    const line = { style: "thin", color: { argb: "FF1D4547" } };
    expect(sheet.getCell("A3").border).toMatchObject({ top: line, right: line, bottom: line, left: line });
  });

  test("widths, heights, merges, frozen panes", () => {
    // ECMA-376 part 1, 18.3.1.13: truncate((characters * 7 + 5) / 7 * 256) / 256, worked out by hand.
    const widths = [1, 2, 3, 4].map((column) => sheet.getColumn(column).width);
    expect(widths).toEqual([20.7109375, 13.2109375, 9.7109375, 16.7109375]);
    expect([1, 2, 3].map((row) => sheet.getRow(row).height)).toEqual([30, undefined, 22.5]);
    expect(sheet.model.merges).toEqual(["A1:C1"]);
    expect(sheet.views[0]).toMatchObject({ state: "frozen", xSplit: 1, ySplit: 3, topLeftCell: "B4" });
    expect(workbook.worksheets[1]!.views[0]?.state).not.toBe("frozen");
  });

  test("names", () => {
    expect(workbook.definedNames.getRanges("Top_Set").ranges).toEqual(["'Everything, O''Brien'!$C$4"]);
    expect(workbook.definedNames.getRanges("All_Sets").ranges).toEqual(["'Everything, O''Brien'!$C$4:$C$6"]);
  });

  test("validations", () => {
    const refuses = { allowBlank: true, showErrorMessage: true, errorStyle: "stop" };
    for (const address of ["B4", "B5"]) {
      expect(sheet.getCell(address).dataValidation).toMatchObject({
        ...refuses,
        type: "list",
        formulae: ['"hypertrophy,strength,peaking"'],
        error: "Allowed: a phase.",
        showInputMessage: true,
        prompt: "Choose a phase.",
      });
    }
    expect(sheet.getCell("B6").dataValidation).toBeUndefined();
    expect(sheet.getCell("C6").dataValidation).toMatchObject({
      ...refuses,
      type: "whole",
      operator: "between",
      formulae: [1, 400],
      error: "1 to 400.",
    });
    expect(sheet.getCell("A4").dataValidation).toMatchObject({
      ...refuses,
      type: "date",
      operator: "between",
    });
    const days = sheet.getCell("A4").dataValidation.formulae as Date[];
    expect(days.map((day) => day.toISOString().slice(0, 10))).toEqual(["2025-01-01", "2026-12-31"]);
  });

  test("conditional formats, the earlier with the smaller number", () => {
    const blocks = (sheet as unknown as { conditionalFormattings: ConditionalBlock[] })
      .conditionalFormattings;
    const rules = blocks.flatMap(({ ref, rules }) => rules.map((rule) => ({ ref, ...rule })));
    const fill = (argb: string) => ({ fill: { type: "pattern", pattern: "solid", bgColor: { argb } } });
    expect(rules.sort((one, other) => one.priority - other.priority)).toMatchObject([
      {
        ref: "B4:B5",
        type: "cellIs",
        operator: "equal",
        formulae: ['"peaking"'],
        style: { ...fill("FF3D2C5C"), font: { bold: true, color: { argb: "FFFFFFFF" } } },
      },
      { ref: "B4:C5", type: "expression", formulae: ["$C4>100"], style: fill("FFF4C7A1") },
      { ref: "B4:C5", type: "expression", formulae: ["$C4>0"], style: fill("FFC9D7E8") },
    ]);
  });

  test("notes", () => {
    expect(sheet.getCell("C3").note).toBe("The bar included.");
    expect(sheet.getCell("B3").note).toBeUndefined();
  });

  test("print set-up, with the sheet's name quoted where it must be", () => {
    const A4 = 9;
    expect(sheet.pageSetup).toMatchObject({
      paperSize: A4,
      orientation: "landscape",
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      printArea: "A1:D8",
      printTitlesRow: "3:3",
    });
    expect(sheet.headerFooter.oddFooter).toBe("Page &P");
    expect(workbook.worksheets[1]!.pageSetup).toMatchObject({ paperSize: A4, orientation: "portrait" });
    expect(workbook.worksheets[1]!.pageSetup.fitToPage).toBeFalsy();
  });
});

interface ConditionalBlock {
  readonly ref: string;
  readonly rules: readonly { readonly priority: number; readonly [property: string]: unknown }[];
}

test("a file opens on the sheet that was activated last", async () => {
  const file = new FileWorkbook();
  await file.addSheets([sheetOf("One", []), sheetOf("Two", []), sheetOf("Three", [])]);
  const opensOn = async () => (await readWorkbook(await file.toXlsx({ title: "" }))).views[0]?.activeTab ?? 0;
  expect(await opensOn()).toBe(0);
  await file.activate("Three");
  await file.activate("two");
  expect(await opensOn()).toBe(1);
});

describe("what a file refuses", () => {
  const refused = (model: Partial<SheetModel>) =>
    expect(toXlsx([{ ...sheetOf("Plan", []), ...model }], { title: "" })).rejects;
  const range = { row: 0, column: 0, rows: 1, columns: 1 };
  const print = { orientation: "portrait", fitWidth: false } as const;

  test("no sheets at all", async () => {
    await expect(toXlsx([], { title: "" })).rejects.toThrow("at least one sheet");
  });

  test.each(["", " ", "x".repeat(32), "a/b", "a\\b", "a:b", "what?", "a*b", "[1]", "'quoted'", "history"])(
    "the sheet name %p, before anything is added",
    async (name) => {
      const file = new FileWorkbook();
      const models = [sheetOf("Sound", []), sheetOf(name, [])];
      await expect(file.addSheets(models)).rejects.toThrow(/cannot be named/);
      expect(await file.sheetNames()).toEqual([]);
    },
  );

  test.each(["Q1", "r", "R1C1", "two words", "1st", "a-b", "_xlnm.Print_Area"])("the range name %p", (name) =>
    refused({ names: [{ name, range }] }).toThrow(/A range cannot be named/),
  );

  test("cells that are no cells", async () => {
    const cell = { row: 1, column: 27 };
    await refused({ cells: [{ ...cell, value: NaN }] }).toThrow('The number at AB2 of "Plan" is NaN');
    await refused({ cells: [{ ...cell, value: "x".repeat(32_768) }] }).toThrow("32768 characters");
    await refused({ cells: [{ ...cell, value: 1, formula: "=1" }] }).toThrow("both a value and a formula");
    await refused({ cells: [{ ...cell, value: 1 }, cell] }).toThrow("Two cells stand at AB2");
    await refused({ cells: [{ ...cell, style: "none" }] }).toThrow('style "none", which the sheet lacks');
  });

  test("looks that no program could show", async () => {
    await refused({ styles: { odd: { fill: "teal" } } }).toThrow("not of the form #RRGGBB");
    const larger = { kind: "textIs", range, text: "x", look: { size: 20 } } as const;
    await refused({ conditionalFormats: [larger] }).toThrow('cannot change "size"');
  });

  test("validations and footers that would make a file unreadable", async () => {
    const list = { kind: "list", range, message: "" } as const;
    await refused({ validations: [{ ...list, values: ["a,b"] }] }).toThrow('the value "a,b"');
    await refused({ validations: [{ ...list, values: Array(26).fill("0123456789") }] }).toThrow(
      "285 characters",
    );
    await refused({ validations: [{ ...list, values: ["a"], message: "x".repeat(256) }] }).toThrow(
      "The message",
    );
    await refused({ validations: [{ ...list, values: ["a"], prompt: "x".repeat(256) }] }).toThrow(
      "The prompt",
    );
    await refused({ print: { ...print, footer: "x".repeat(256) } }).toThrow("The footer has 256");
  });
});

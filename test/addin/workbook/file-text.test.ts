/** Characters that a file cannot hold as they are. */
import { toFileText } from "../../../addin/workbook/file/file-text";
import { toXlsx } from "../../../addin/workbook/file";
import { readWorkbook } from "../../hosts/spreadsheet/program";
import { sheetOf } from "./bench-fixture";

test.each([
  ["plain, Zoë 🏋 & <b>", "plain, Zoë 🏋 & <b>"],
  ["_x0041_", "_x005F_x0041_"],
  ["_x0041 x0041_ _xzzzz_", "_x0041 x0041_ _xzzzz_"],
  ["_x0041_x0042_", "_x005F_x0041_x005F_x0042_"],
  ["a\uFFFEb\uFFFF", "a_xFFFE_b_xFFFF_"],
  ["half \uD83C here", "half \uFFFD here"],
  ["\uDFCB half", "\uFFFD half"],
])("%j is held as %j", (text, file) => {
  expect(toFileText(text)).toBe(file);
});

test("every character below 0x20, and the last ones of all, leave a file that opens", async () => {
  const odd = Array.from({ length: 32 }, (_, code) => `a${String.fromCharCode(code)}b`).concat("a\uFFFFb");
  const cells = odd.map((value, row) => ({ row, column: 0, value }));
  const workbook = await readWorkbook(await toXlsx([sheetOf("Odd", cells)], { title: "a\u0001b" }));
  const read = odd.map((_, row) => workbook.worksheets[0]!.getCell(row + 1, 1).value);
  expect(read).toEqual(odd);
});

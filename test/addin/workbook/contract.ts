/** What every workbook port must do, whichever workbook is behind it. */
import type { Cell } from "../../../addin/sheets/model";
import type { Workbook } from "../../../addin/workbook/port";
import { sheetOf } from "./bench-fixture";

export interface ContractSubject {
  readonly workbook: Workbook;
  /**
   * A sheet's cells that hold something, row by row, as the workbook itself has them: a formula as a formula
   * beginning with "=", text as a value. Not read through the port.
   */
  readonly contents: (
    sheetName: string,
  ) => Promise<readonly Pick<Cell, "row" | "column" | "value" | "formula">[]>;
  /** A name in the workbook as the workbook itself has it, such as `'Plan'!$A$1:$B$2`; undefined when free. */
  readonly rangeOf: (name: string) => Promise<string | undefined>;
  readonly close?: () => Promise<void>;
}

export interface ContractOptions {
  /** Whether the workbook works formulas out by itself; where not, reading them must be refused. */
  readonly calculates: boolean;
}

/** Text from people that a spreadsheet program would take for something else. */
const TRICKY_TEXTS = [
  "=1+1",
  "+1",
  "-1",
  "@x",
  "007",
  "1/2",
  "TRUE",
  "12:30",
  "=HYPERLINK(A1)",
  "two\nlines",
  'say "go"',
  "Zoë 🏋",
  "#N/A",
  "x".repeat(300),
];

const at = (row: number, column: number, content: Pick<Cell, "value" | "formula">): Cell => ({
  row,
  column,
  ...content,
});

/** Runs the contract as a block of tests of its own. One workbook serves them all. */
export function describeWorkbookContract(
  name: string,
  makeWorkbook: () => Promise<ContractSubject>,
  { calculates }: ContractOptions,
): void {
  describe(`${name}, as every workbook`, () => {
    let subject: ContractSubject;
    const { add, names, values } = {
      add: (...models: Parameters<typeof subject.workbook.addSheets>[0]) =>
        subject.workbook.addSheets(models),
      names: () => subject.workbook.sheetNames(),
      values: (sheetName: string) => subject.workbook.readValues(sheetName),
    };

    beforeAll(async () => {
      subject = await makeWorkbook();
    }, 180_000);
    afterAll(() => subject?.close?.());

    test("adds sheets after those it has, in their order", async () => {
      const before = await names();
      await add(sheetOf("Second of all", []), sheetOf("A first", []));
      expect(await names()).toEqual([...before, "Second of all", "A first"]);
      await add();
      expect(await names()).toHaveLength(before.length + 2);
    });

    test("reads back numbers, text and truth from the first cell that holds something on", async () => {
      const cells = [
        at(2, 1, { value: "Kg" }),
        at(2, 3, { value: true }),
        at(4, 1, { value: 102.5 }),
        at(4, 2, { value: false }),
        at(4, 3, { value: 0 }),
      ];
      await add(sheetOf("Values", cells));
      expect(await values("Values")).toEqual([
        ["Kg", "", true],
        ["", "", ""],
        [102.5, false, 0],
      ]);
      expect(await subject.contents("Values")).toEqual(cells);
    });

    test("reads nothing from an empty sheet", async () => {
      await add(sheetOf("Empty", []));
      expect(await values("Empty")).toEqual([]);
      expect(await subject.contents("Empty")).toEqual([]);
    });

    test("never makes a formula, a number or a date of text", async () => {
      const cells = TRICKY_TEXTS.map((value, row) => at(row, 0, { value }));
      await add(sheetOf("Texts", cells));
      expect(await subject.contents("Texts")).toEqual(cells);
      expect(await values("Texts")).toEqual(TRICKY_TEXTS.map((text) => [text]));
    });

    test("keeps formulas as formulas", async () => {
      const cells = [
        at(0, 0, { value: 60 }),
        at(0, 1, { formula: '=IF(A1>50,"heavy","light")' }),
        at(1, 0, { formula: "=SUM(A1:A1)*2.5" }),
      ];
      await add(sheetOf("Formulas", cells));
      expect(await subject.contents("Formulas")).toEqual(cells);
      if (calculates) {
        expect(await values("Formulas")).toEqual([
          [60, "heavy"],
          [150, ""],
        ]);
      } else {
        await expect(values("Formulas")).rejects.toThrow('"Formulas" holds the formula =IF(');
      }
    });

    test("names a range on its own sheet", async () => {
      const names = [{ name: "Best_Lifts", range: { row: 1, column: 0, rows: 2, columns: 3 } }];
      await add({ ...sheetOf("Coach's own", []), names });
      expect(await subject.rangeOf("Best_Lifts")).toBe("'Coach''s own'!$A$2:$C$3");
    });

    test("refuses a taken name whatever its capitals, and writes nothing at all", async () => {
      await add(sheetOf("Taken", [at(0, 0, { value: "first" })]));
      const before = await names();
      const taken = 'The sheet name "tAKEN" is taken';
      await expect(add(sheetOf("Free", []), sheetOf("tAKEN", []))).rejects.toThrow(taken);
      await expect(add(sheetOf("Twice", []), sheetOf("TWICE", []))).rejects.toThrow('"TWICE" is taken');
      expect(await names()).toEqual(before);
      expect(await values("Taken")).toEqual([["first"]]);
    });

    test("refuses a taken name of a range, and writes nothing at all", async () => {
      const range = { row: 0, column: 0, rows: 1, columns: 1 };
      await add({ ...sheetOf("Naming one", []), names: [{ name: "Top_Set_Kg", range }] });
      const before = await names();
      const again = { ...sheetOf("Naming another", []), names: [{ name: "TOP_SET_KG", range }] };
      await expect(add(sheetOf("Free as well", []), again)).rejects.toThrow('"TOP_SET_KG" is taken');
      expect(await names()).toEqual(before);
      expect(await subject.rangeOf("Top_Set_Kg")).toBe("'Naming one'!$A$1");
    });

    test("leaves out all sheets when one of them is faulty", async () => {
      const before = await names();
      const faulty = sheetOf("Faulty", [{ row: 0, column: 0, value: "x", style: "misspelt" }]);
      await expect(add(sheetOf("Sound", []), faulty)).rejects.toThrow('"misspelt", which the sheet lacks');
      expect(await names()).toEqual(before);
    });

    test("takes only sheets it has for activating and reading", async () => {
      await add(sheetOf("Here", []));
      await subject.workbook.activate("Here");
      await expect(subject.workbook.activate("Nowhere")).rejects.toThrow('no sheet "Nowhere"');
      await expect(values("Nowhere")).rejects.toThrow('no sheet "Nowhere"');
    });
  });
}

import { readCsv } from "../../../addin/read/csv";

test("commas, semicolons and tabs", () => {
  expect(readCsv("a,b\n1,2")).toEqual([
    ["a", "b"],
    ["1", "2"],
  ]);
  expect(readCsv("a;b\r\n82,5;2\r\n3,5;1")).toEqual([
    ["a", "b"],
    ["82,5", "2"],
    ["3,5", "1"],
  ]);
  expect(readCsv("a\tb,c\n1\t2")).toEqual([
    ["a", "b,c"],
    ["1", "2"],
  ]);
});

test("a byte-order mark, quotes, and line breaks in a cell", () => {
  expect(readCsv('\ufeffLifter,Sex\n"Ann ""A"", of Ely\nand Rye",female\n')).toEqual([
    ["Lifter", "Sex"],
    ['Ann "A", of Ely\nand Rye', "female"],
  ]);
  expect(readCsv('\ufeff"Lifter";"Sex, m or f"')).toEqual([["Lifter", "Sex, m or f"]]);
});

test("text that looks like a number or a formula stays text", () => {
  expect(readCsv("=1+1,007,1e3,")).toEqual([["=1+1", "007", "1e3", ""]]);
});

test("blank files and blank lines", () => {
  expect(readCsv("")).toEqual([]);
  expect(readCsv("a,b\n\n,\n1,2").map((row) => row.join("|"))).toEqual(["a|b", "", "|", "1|2"]);
});

test("a quote that is never closed is an error that says where", () => {
  expect(() => readCsv('a,b\n1,"2\n3,4')).toThrow("line 2");
  expect(readCsv('a,b\n1,5" plate\n2,""')).toEqual([
    ["a", "b"],
    ["1", '5" plate'],
    ["2", ""],
  ]);
  expect(readCsv('a,b\n1,x;"y')).toEqual([
    ["a", "b"],
    ["1", 'x;"y'],
  ]);
});

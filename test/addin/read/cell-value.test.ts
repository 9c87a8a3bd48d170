import { isBlankCell, readCell } from "../../../addin/read/cell-value";

const NBSP = "\u00a0";

test("blank cells", () => {
  for (const cell of [null, undefined, "", "  ", NBSP, `${NBSP}\t`]) {
    expect(isBlankCell(cell)).toBe(true);
    expect(readCell("squatKg", cell)).toBeNull();
  }
  for (const cell of [0, false, "0", "x"]) expect(isBlankCell(cell)).toBe(false);
});

test("numeric text is a number in a number column alone", () => {
  expect(readCell("bodyweightKg", "82.5")).toBe(82.5);
  expect(readCell("bodyweightKg", `${NBSP}82.5 `)).toBe(82.5);
  expect(readCell("lifter", "007")).toBe("007");
  expect(readCell("sex", "1")).toBe("1");
});

test("text that is no plain decimal stays for the engine to name", () => {
  for (const text of ["82,5", "82.5 kg", "8e1", "1,234.5", "0x10", "Infinity", "--5"]) {
    expect(readCell("bodyweightKg", text)).toBe(text);
  }
  expect(readCell("classLimitKg", "120+")).toBe("120+");
});

test("dates: serial numbers as numbers or text, ISO text as it is", () => {
  expect(readCell("meetDate", 36526)).toBe("2000-01-01");
  expect(readCell("meetDate", "36526")).toBe("2000-01-01");
  expect(readCell("meetDate", " 2027-05-15 ")).toBe("2027-05-15");
  expect(readCell("bodyweightKg", 36526)).toBe(36526);
});

test("truth values, also as text", () => {
  expect(readCell("explosive", true)).toBe(true);
  expect(readCell("explosive", "TRUE")).toBe(true);
  expect(readCell("explosive", "false")).toBe(false);
  expect(readCell("explosive", "yes")).toBe("yes");
  expect(readCell("lifter", "TRUE")).toBe("TRUE");
});

test("error values are kept as the text they show", () => {
  expect(readCell("squatKg", "#N/A")).toBe("#N/A");
  expect(readCell("squatKg", { type: "Error", basicValue: "#DIV/0!", errorType: "Div0" })).toBe("#DIV/0!");
  expect(readCell("squatKg", { code: "#VALUE!", message: "no" })).toBe("#VALUE!");
  expect(readCell("squatKg", {})).toBe("an error value");
});

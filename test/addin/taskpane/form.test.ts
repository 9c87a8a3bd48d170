import { FORM_FIELDS, isPlainDecimal, readForm, type Typed } from "../../../addin/read/form";
import { exampleForm } from "../../../addin/taskpane/state/example";

const blank = Object.fromEntries(FORM_FIELDS.map((field) => [field, ""])) as Record<keyof Typed, string>;

test("blank fields are left out", () => {
  expect(readForm(blank, "kg")).toEqual({ unit: "kg" });
  expect(readForm({ ...blank, squatKg: "   " }, "lb")).toEqual({ unit: "lb" });
});

test("plain decimals in number fields become numbers, in text fields they stay text", () => {
  const read = readForm(
    { ...blank, lifter: "74", squatKg: " 182.5 ", benchKg: "-20", trainingYears: ".5" },
    "kg",
  );
  expect(read).toEqual({ unit: "kg", lifter: "74", squatKg: 182.5, benchKg: -20, trainingYears: 0.5 });
});

test.each(["142,5", "1e3", "200 kg", "120+", "0x10", "Infinity", "1.2.3", "٣", "-", "."])(
  "%p stays the text that was typed",
  (text) => {
    expect(isPlainDecimal(text)).toBe(false);
    expect(readForm({ ...blank, classLimitKg: text }, "kg")["classLimitKg"]).toBe(text);
  },
);

test.each([
  // Wednesday, Sunday, Monday: each from a printed calendar.
  ["2026-11-25", "2026-11-30", "2027-03-20"],
  ["2026-11-29", "2026-11-30", "2027-03-20"],
  ["2026-11-30", "2026-12-07", "2027-03-27"],
])("opened on %s the example starts on Monday %s and meets on Saturday %s", (today, startDate, meetDate) => {
  expect(exampleForm(today)).toMatchObject({ startDate, meetDate });
});

import { REQUEST_FIELDS } from "../../../engine/index";
import { HEADINGS, isHeadingRow, readHeading } from "../../../addin/read/headings";
import { isNearMiss } from "../../../addin/read/near-miss";

const KNOWN: readonly (readonly [string, string, "kg" | "lb" | null])[] = [
  ["Lifter", "lifter", null],
  [" NAME ", "lifter", null],
  ["Sex", "sex", null],
  ["Bodyweight", "bodyweightKg", null],
  ["Bodyweight (kg)", "bodyweightKg", "kg"],
  ["Bodyweight kg", "bodyweightKg", "kg"],
  ["body-weight [lb]", "bodyweightKg", "lb"],
  ["bodyweightKg", "bodyweightKg", null],
  ["bodyweightkg", "bodyweightKg", null],
  ["Class limit", "classLimitKg", null],
  ["Training years", "trainingYears", null],
  ["training_years", "trainingYears", null],
  ["Squat", "squatKg", null],
  ["SQUAT, LBS", "squatKg", "lb"],
  ["Bench (pounds)", "benchKg", "lb"],
  ["Deadlift\u00a0(kg)", "deadliftKg", "kg"],
  ["Recovery", "recovery", null],
  ["Room in class", "roomInClass", null],
  ["roomInClass", "roomInClass", null],
  ["Explosive?", "explosive", null],
  ["Start date", "startDate", null],
  ["Meet date:", "meetDate", null],
  ["Level", "level", null],
  ["Hard weeks", "hardWeeks", null],
  ["Prep weeks", "prepWeeks", null],
  ["Preparation weeks", "prepWeeks", null],
  ["Unit", "unit", null],
  ["Week start", "weekStart", null],
  ["Arrangement", "arrangement", null],
];

test.each(KNOWN)("%j heads %s", (text, field, unit) => {
  expect(readHeading(text)).toEqual({ kind: "known", text: text.trim(), field, unit });
});

test("every field has a standard heading that is read as that field, and so is its key", () => {
  expect(REQUEST_FIELDS.length).toBeGreaterThan(10);
  for (const field of REQUEST_FIELDS) {
    expect(readHeading(HEADINGS[field])).toMatchObject({ kind: "known", field });
    expect(readHeading(field)).toEqual({ kind: "known", text: field, field, unit: null });
  }
});

test("unknown headings, with what was probably meant", () => {
  const meantBy = (text: string) => {
    const read = readHeading(text);
    return read.kind === "unknown" ? read.meant : read.kind;
  };
  expect(meantBy("Bodywieght (kg)")).toBe("bodyweightKg");
  expect(meantBy("Sqaut")).toBe("squatKg");
  expect(meantBy("Recovry")).toBe("recovery");
  expect(meantBy("Notes")).toBeNull();
  expect(meantBy("Phone")).toBeNull();
  expect(meantBy("Hard weeks (kg)")).not.toBe("known");
  expect(meantBy("  ")).toBe("blank");
});

test("near misses are one slip away, two in a long word", () => {
  expect(isNearMiss("levle", "level")).toBe(true);
  expect(isNearMiss("lvle", "level")).toBe(false);
  expect(isNearMiss("bodyweit", "bodyweight")).toBe(true);
  expect(isNearMiss("bodywt", "bodyweight")).toBe(false);
  expect(isNearMiss("sax", "sex")).toBe(false);
});

test("a heading row has two known headings and no number", () => {
  expect(isHeadingRow(["Lifter", "Sex"])).toBe(true);
  expect(isHeadingRow(["Lifter", "Colour", null])).toBe(false);
  expect(isHeadingRow(["Lifter", "Sex", 3])).toBe(false);
  expect(isHeadingRow(["Ann", "female", 60])).toBe(false);
});

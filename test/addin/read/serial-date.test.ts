import { dayOfSerial, readDay } from "../../../addin/read/serial-date";

// Serial numbers as spreadsheet programs show them for these dates.
const KNOWN: readonly (readonly [number, string])[] = [
  [1, "1900-01-01"],
  [59, "1900-02-28"],
  [61, "1900-03-01"],
  [366, "1900-12-31"],
  [25569, "1970-01-01"],
  [36526, "2000-01-01"],
  [36585, "2000-02-29"],
  [36586, "2000-03-01"],
  [43831, "2020-01-01"],
  [73050, "2099-12-31"],
  [73109, "2100-02-28"],
  [73110, "2100-03-01"],
  [2958465, "9999-12-31"],
];

test.each(KNOWN)("serial %d is %s", (serial, day) => {
  expect(dayOfSerial(serial)).toBe(day);
});

test("every day of two centuries, beside the platform's own UTC calendar", () => {
  const wrong = [];
  for (let serial = 61; serial < 73500; serial++) {
    const day = new Date(Date.UTC(1970, 0, 1) + (serial - 25569) * 86400000).toISOString().slice(0, 10);
    if (dayOfSerial(serial) !== day) wrong.push([serial, dayOfSerial(serial), day]);
  }
  expect(wrong).toEqual([]);
});

test("the day that never was, and numbers that are no days", () => {
  expect(dayOfSerial(60)).toBeNull();
  for (const none of [0, 0.9, -1, 2958466, Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(dayOfSerial(none)).toBeNull();
  }
});

test("the time of day is dropped", () => {
  expect(dayOfSerial(36526.999)).toBe("2000-01-01");
  expect(readDay("2027-05-15T23:59:59Z")).toBe("2027-05-15");
  expect(readDay("2027-05-15 00:00")).toBe("2027-05-15");
});

test("what is no plausible date stays as it is, for the engine to name", () => {
  for (const content of [2027, 20270515, -3, "15/05/2027", "2027-5-1", true, "May"]) {
    expect(readDay(content)).toBe(content);
  }
});

import { dayOfSerial, daySerial, dayText } from "../../../addin/sheets/words";

test.each([
  ["2027-05-03", "Mon 3 May 2027"],
  ["2024-02-29", "Thu 29 Feb 2024"],
  ["1999-12-31", "Fri 31 Dec 1999"],
  ["2027-10-31", "Sun 31 Oct 2027"],
])("%s is %s", (day, text) => {
  expect(dayText(day)).toBe(text);
});

/** Serial numbers as spreadsheet programs show them for these days. */
test.each([
  ["1900-03-01", 61],
  ["1970-01-01", 25569],
  ["2000-01-01", 36526],
  ["2008-01-01", 39448],
])("%s is day %i", (day, serial) => {
  expect(daySerial(day)).toBe(serial);
  expect(dayOfSerial(serial)).toBe(day);
});

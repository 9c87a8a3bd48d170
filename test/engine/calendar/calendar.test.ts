import { execFileSync } from "node:child_process";
import path from "node:path";
import { addDays, daysBetween, daysEvery, isDay, weekdayOf } from "../../../engine/calendar/day";
import { countWeeks } from "../../../engine/calendar/count-weeks";
import { WEEKDAYS, startOfWeek } from "../../../engine/calendar/week";

describe("days", () => {
  test.each([
    "2027-02-30",
    "2027-13-01",
    "2027-00-10",
    "2027-2-3",
    "27-02-03",
    "",
    "2027-02-03T00:00",
    20270203,
    null,
  ])("%p is no day", (text) => expect(isDay(text)).toBe(false));
  test("2028 has a leap day, 2027 and 2100 have none", () => {
    expect([isDay("2028-02-29"), isDay("2027-02-29"), isDay("2100-02-29")]).toEqual([true, false, false]);
  });
  test("known weekdays (ISO 8601 calendar)", () => {
    expect([weekdayOf("2027-05-15"), weekdayOf("2000-01-01"), weekdayOf("2026-11-25")]).toEqual([6, 6, 3]);
  });
});

describe("weeks", () => {
  test.each(WEEKDAYS)("a week that starts on %s holds its day and starts there", (weekStart) => {
    for (const day of daysEvery("2027-03-20", 1, 30)) {
      const start = startOfWeek(day, weekStart);
      expect(WEEKDAYS[weekdayOf(start)]).toBe(weekStart);
      expect(daysBetween(start, day)).toBeGreaterThanOrEqual(0);
      expect(daysBetween(start, day)).toBeLessThan(7);
    }
  });
  test("both the first and the meet week count", () => {
    expect(countWeeks("2027-05-10", "2027-05-15", "monday").available).toBe(1);
    expect(countWeeks("2027-05-09", "2027-05-15", "monday").available).toBe(2);
    expect(countWeeks("2027-02-22", "2027-05-15", "monday").available).toBe(12);
  });
});

/** Clocks are changed at midnight in Santiago, by half an hour on Lord Howe; UTC is the plain case. */
const ZONES = ["America/Santiago", "Pacific/Auckland", "Australia/Lord_Howe", "UTC"];

describe("no time zone moves a day", () => {
  test.each(ZONES)("%s", (zone) => {
    const script = path.join(__dirname, "zone-sweep.ts");
    const tsx = path.join(path.dirname(require.resolve("tsx/package.json")), "dist", "cli.mjs");
    const printed = execFileSync(process.execPath, [tsx, script], {
      env: { ...process.env, TZ: zone },
      encoding: "utf8",
    });
    expect(JSON.parse(printed)).toEqual({ zone, days: 1096, faults: [] });
  });
  test("five weeks over a change of clocks", () => expect(addDays("2027-03-20", 35)).toBe("2027-04-24"));
});

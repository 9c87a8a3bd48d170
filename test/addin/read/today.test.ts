import { isDay } from "../../../engine/index";
import { today } from "../../../addin/read/today";

test("the local day of the clock, padded", () => {
  jest.useFakeTimers({ now: new Date(2027, 2, 4, 23, 59) });
  expect(today()).toBe("2027-03-04");
  jest.setSystemTime(new Date(2027, 11, 31, 0, 0));
  expect(today()).toBe("2027-12-31");
  jest.useRealTimers();
  expect(isDay(today())).toBe(true);
});

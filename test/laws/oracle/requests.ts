/** Random requests, the same at every run. */
import fc from "fast-check";
import { addDays } from "../../../engine/calendar/day";
import { WEEKDAYS } from "../../../engine/calendar/week";
import { ARRANGEMENTS, LEVELS, LIFTS, PHASES, RECOVERIES, ROOMS, SEXES } from "../../../engine/words";

export type RandomRequest = Readonly<Record<string, unknown>>;

const rarely = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 3 });

const bests = fc.record({
  squatKg: fc.integer({ min: 60, max: 380 }),
  benchKg: fc.integer({ min: 40, max: 240 }),
  deadliftKg: fc.integer({ min: 80, max: 380 }),
});

/** Requests of every kind of lifter, with the weeks from first training week to meet week drawn from `weeks`. */
function requestsOver(weeks: readonly [number, number]): fc.Arbitrary<RandomRequest> {
  return fc
    .record({
      sex: fc.constantFrom(...SEXES),
      bodyweightKg: fc.double({ min: 40, max: 150, noNaN: true }),
      trainingYears: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 20 })),
      bests: fc.option(bests, { nil: undefined }),
      recovery: fc.constantFrom(...RECOVERIES),
      roomInClass: fc.constantFrom(...ROOMS),
      explosive: fc.boolean(),
      startsAfter: fc.integer({ min: 0, max: 700 }),
      weeks: fc.integer({ min: weeks[0], max: weeks[1] }),
      meetWeekday: fc.integer({ min: 0, max: 6 }),
      weekStart: fc.constantFrom(...WEEKDAYS),
      arrangement: fc.constantFrom(...ARRANGEMENTS),
      level: fc.option(fc.constantFrom(...LEVELS), { nil: undefined }),
      hardWeeks: rarely(fc.integer({ min: 2, max: 6 })),
      prepWeeks: rarely(fc.integer({ min: 3, max: 26 })),
      mesocycleTolerance: rarely(fc.integer({ min: 0, max: 3 })),
    })
    .map(({ bests: lifts, startsAfter, weeks: count, meetWeekday, ...rest }) => {
      const startDate = addDays("2026-01-05", startsAfter);
      return { ...rest, ...lifts, startDate, meetDate: addDays(startDate, (count - 1) * 7 + meetWeekday) };
    });
}

/** One pin of any sort. */
const pins = fc.oneof(
  fc
    .record({ number: fc.integer({ min: 1, max: 2 }), hardWeeks: fc.integer({ min: 2, max: 6 }) })
    .map((pin) => ({ mesocycles: [pin] })),
  fc
    .record({
      lift: fc.constantFrom(...LIFTS),
      phase: fc.constantFrom(...PHASES),
      weeks: fc.integer({ min: 2, max: 6 }),
    })
    .map((pin) => ({ phaseWeeks: [pin] })),
  fc
    .record({
      weeksToMeet: fc.integer({ min: 1, max: 9 }),
      lift: fc.constantFrom(...LIFTS),
      phase: fc.constantFrom(...PHASES),
    })
    .map((pin) => ({ weekPhases: [pin] })),
  fc
    .record({
      weeksToMeet: fc.integer({ min: 1, max: 12 }),
      kind: fc.constantFrom("hard", "deload", "bridge"),
    })
    .map((pin) => ({ weekKinds: [pin] })),
);

export function drawRequests(
  count: number,
  seed: number,
  weeks: readonly [number, number] = [1, 34],
): RandomRequest[] {
  return fc.sample(requestsOver(weeks), { seed, numRuns: count });
}

export function drawPinnedRequests(count: number, seed: number): RandomRequest[] {
  const pinned = fc.tuple(requestsOver([8, 22]), pins).map(([request, each]) => ({ ...request, pins: each }));
  return fc.sample(pinned, { seed, numRuns: count });
}

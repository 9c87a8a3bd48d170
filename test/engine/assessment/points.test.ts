import fc from "fast-check";
import { dotsAtPercentile, dotsPercentile } from "../../../engine/assessment/percentile";
import { dotsPoints, glPoints } from "../../../engine/assessment/points";
import { DOTS_PERCENTILES } from "../../../engine/rules/percentiles";
import { DOTS_ROWS, GL_ROWS } from "../../../engine/rules/points";
import { SEXES } from "../../../engine/words";

const bodyweights = fc.double({ min: 20, max: 260, noNaN: true });
const totals = fc.double({ min: 1, max: 1400, noNaN: true });
const sexes = fc.constantFrom(...SEXES);

describe("points", () => {
  it("has one DOTS row a sex and one GL row for each sex, event and count of lifts", () => {
    expect(DOTS_ROWS.map((row) => row.sex).sort()).toEqual(["female", "male"]);
    expect(new Set(GL_ROWS.map((row) => `${row.sex} ${row.event} ${row.lifts}`)).size).toBe(8);
    expect(GL_ROWS).toHaveLength(8);
  });

  it("holds the bodyweight within the DOTS formula's range", () => {
    for (const row of DOTS_ROWS) {
      expect(dotsPoints(row.sex, row.lightestKg - 10, 300)).toBe(dotsPoints(row.sex, row.lightestKg, 300));
      expect(dotsPoints(row.sex, row.heaviestKg + 10, 300)).toBe(dotsPoints(row.sex, row.heaviestKg, 300));
      expect(dotsPoints(row.sex, row.lightestKg + 1, 300)).not.toBe(dotsPoints(row.sex, row.lightestKg, 300));
      expect(dotsPoints(row.sex, row.heaviestKg - 5, 300)).not.toBe(dotsPoints(row.sex, row.heaviestKg, 300));
    }
  });

  it("gives no GL points below 35 kg and gives them from 35 kg", () => {
    for (const { sex, event, lifts } of GL_ROWS) {
      expect(glPoints(sex, 34.99, 200, event, lifts)).toBeNull();
      expect(glPoints(sex, 35, 200, event, lifts)).toBeGreaterThan(0);
    }
  });

  it("is proportional to the total and positive for any bodyweight", () => {
    fc.assert(
      fc.property(sexes, bodyweights, totals, (sex, bodyweightKg, totalKg) => {
        const points = dotsPoints(sex, bodyweightKg, totalKg);
        expect(points).toBeGreaterThan(0);
        expect(dotsPoints(sex, bodyweightKg, totalKg * 2) / points).toBeCloseTo(2, 9);
        if (bodyweightKg < 35) return;
        for (const row of GL_ROWS.filter((each) => each.sex === sex)) {
          const gl = glPoints(sex, bodyweightKg, totalKg, row.event, row.lifts)!;
          expect(gl).toBeGreaterThan(0);
          expect(glPoints(sex, bodyweightKg, totalKg * 2, row.event, row.lifts)! / gl).toBeCloseTo(2, 9);
        }
      }),
      { seed: 20, numRuns: 300 },
    );
  });

  it("gives a woman more DOTS than a man of her bodyweight for the same total", () => {
    for (let kg = 45; kg <= 150; kg += 5) {
      expect(dotsPoints("female", kg, 400)).toBeGreaterThan(dotsPoints("male", kg, 400));
    }
  });
});

describe("percentiles", () => {
  it("has 99 rising points a sex", () => {
    expect(DOTS_PERCENTILES.map((row) => row.sex).sort()).toEqual(["female", "male"]);
    for (const row of DOTS_PERCENTILES) {
      expect(row.dots).toHaveLength(99);
      expect(row.dots.every((dots, i) => i === 0 || dots > row.dots[i - 1]!)).toBe(true);
    }
  });

  it("meets the table at its points and holds at its ends", () => {
    for (const row of DOTS_PERCENTILES) {
      row.dots.forEach((dots, i) => {
        expect(dotsPercentile(row.sex, dots)).toBeCloseTo(i + 1, 9);
        expect(dotsAtPercentile(row.sex, i + 1)).toBe(dots);
      });
      expect(dotsPercentile(row.sex, 0)).toBe(1);
      expect(dotsPercentile(row.sex, 2000)).toBe(99);
    }
  });

  it("lies halfway between two points at their mean", () => {
    for (const row of DOTS_PERCENTILES) {
      const mean = (row.dots[49]! + row.dots[50]!) / 2;
      expect(dotsPercentile(row.sex, mean)).toBeCloseTo(50.5, 9);
    }
  });

  it("goes there and back, and rises with the score", () => {
    fc.assert(
      fc.property(sexes, fc.double({ min: 1, max: 99, noNaN: true }), (sex, percentile) => {
        expect(dotsPercentile(sex, dotsAtPercentile(sex, percentile))).toBeCloseTo(percentile, 6);
      }),
      { seed: 21 },
    );
    fc.assert(
      fc.property(sexes, totals, totals, (sex, a, b) => {
        expect(dotsPercentile(sex, Math.min(a, b))).toBeLessThanOrEqual(dotsPercentile(sex, Math.max(a, b)));
      }),
      { seed: 22 },
    );
  });

  it("refuses a percentile outside 1 to 99", () => {
    expect(() => dotsAtPercentile("male", 0.5)).toThrow(/Maybe/);
    expect(() => dotsAtPercentile("male", 99.1)).toThrow(/Maybe/);
  });
});

import fc from "fast-check";
import { solvePartitions, type Cuts, type PartitionProblem } from "../../../engine/search/partition";

/** Every pattern with every choice of cuts, tried one by one. */
function bruteForce(problem: PartitionProblem): number {
  const patterns: number[][] = [];
  const extend = (parts: number[], left: number): void => {
    if (problem.lastSizes.has(left)) patterns.push([...parts, left]);
    for (const size of problem.sizes.keys()) if (size < left) extend([...parts, size], left - size);
  };
  extend([], problem.length);
  let best = Infinity;
  for (const parts of patterns) {
    let cost = problem.baseCost;
    const ends = new Set<number>();
    parts.reduce((sum, size) => (ends.add(sum + size), sum + size), 0);
    parts.forEach((size, index) => {
      cost += (index === parts.length - 1 ? problem.lastSizes : problem.sizes).get(size)!;
      if (index > 0) cost += Math.max(0, size - parts[index - 1]!) * problem.growthCost;
    });
    const partsAnEnd = (place: number) => place > 0 && place + 1 < problem.length && ends.has(place + 1);
    const price = (cut: Cuts) =>
      (partsAnEnd(cut.first) || partsAnEnd(cut.second) ? Infinity : 0) +
      cut.cost +
      (cut.first > 0 && !ends.has(cut.first) ? problem.misalignedCost : 0) +
      (ends.has(cut.second) ? 0 : problem.misalignedCost);
    const [a, b, c] = problem.tracks as [readonly Cuts[], readonly Cuts[], readonly Cuts[]];
    for (const x of a)
      for (const y of b)
        for (const z of c) {
          const overlap = Math.max(x.first, y.first, z.first) <= Math.min(x.second, y.second, z.second);
          const same =
            x.first === y.first && y.first === z.first && x.second === y.second && y.second === z.second;
          if (problem.tie === "overlap" && !overlap) continue;
          if (problem.tie === "same" && !same) continue;
          best = Math.min(best, cost + price(x) + price(y) + price(z));
        }
  }
  return best;
}

const problems = fc
  .record({
    length: fc.integer({ min: 3, max: 11 }),
    costs: fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 40, maxLength: 40 }),
    growthCost: fc.integer({ min: 0, max: 3 }),
    misalignedCost: fc.integer({ min: 0, max: 4 }),
    tie: fc.constantFrom("free", "overlap", "same" as const),
  })
  .map(({ length, costs, growthCost, misalignedCost, tie }): PartitionProblem => {
    let at = 0;
    const next = () => costs[at++ % costs.length]!;
    const track = (): Cuts[] => {
      const cuts: Cuts[] = [];
      for (let first = 0; first < length - 1; first += 2)
        for (let second = first + 1; second < length; second += 2)
          cuts.push({ first, second, cost: next() * 2 + (next() % 3) });
      return cuts;
    };
    return {
      length,
      baseCost: next(),
      sizes: new Map([3, 4, 5].map((size) => [size, next()])),
      lastSizes: new Map([2, 3, 4, 5].map((size) => [size, next()])),
      growthCost,
      fixedSizes: new Map(),
      ends: new Map(),
      tracks: [track(), track(), track()],
      misalignedCost,
      tie: tie as PartitionProblem["tie"],
    };
  });

test("the best of all partitions is found, for every tie between the tracks", () => {
  let solved = 0;
  fc.assert(
    fc.property(problems, (problem) => {
      const [found] = solvePartitions([problem], 1);
      expect(found?.cost ?? Infinity).toBe(bruteForce(problem));
      if (found) solved++;
    }),
    { seed: 7, numRuns: 400 },
  );
  expect(solved).toBeGreaterThan(200);
});

test("runners-up differ in pattern and come in order of cost", () => {
  fc.assert(
    fc.property(problems, (problem) => {
      const found = solvePartitions([problem], 4);
      expect(new Set(found.map((one) => one.parts.join())).size).toBe(found.length);
      const costs = found.map((one) => one.cost);
      expect(costs).toEqual([...costs].sort((a, b) => a - b));
    }),
    { seed: 8, numRuns: 200 },
  );
});

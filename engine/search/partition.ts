/**
 * Exact search over partitions of a length into parts, with tracks that are each cut twice. Integer costs; knows
 * nothing of what the parts and tracks mean, and imports nothing of ours.
 *
 * Given lengths to choose from, find the parts p1 … pB (their sizes add up to the length) and for each track two
 * cuts, first <= second, such that one moment t lies between the two cuts of every track, at the least cost:
 * the cost of the sizes, of growth from one part to the next, of each track's own cuts, and of each cut that does
 * not stand at the end of a part.
 *
 * For a fixed t the tracks do not touch each other, so each takes its own best cuts. Patterns of parts are few:
 * they are enumerated in the order of a lower bound, and the search stops where the bound shows that no better
 * pattern can follow.
 */

/** A track's two cuts: `first` 0 means that the first stretch is empty. */
export interface Cuts {
  readonly first: number;
  readonly second: number;
  readonly cost: number;
}

export interface PartitionProblem {
  readonly length: number;
  readonly baseCost: number;
  /** Cost by size of every part but the last; a size that is absent is not allowed. */
  readonly sizes: ReadonlyMap<number, number>;
  readonly lastSizes: ReadonlyMap<number, number>;
  /** Cost of each unit by which a part is longer than the one before it. */
  readonly growthCost: number;
  /** Sizes that are fixed, by the part's index from 0; they may be sizes not allowed elsewhere, at the cost given. */
  readonly fixedSizes: ReadonlyMap<
    number,
    { readonly size: number; readonly cost: number; readonly lastCost: number }
  >;
  /** Whether a part must (true) or must not (false) end at a place from 1 to length. */
  readonly ends: ReadonlyMap<number, boolean>;
  readonly tracks: readonly (readonly Cuts[])[];
  /** Cost of a cut that does not stand at the end of a part. */
  readonly misalignedCost: number;
  /** free: no moment t is asked for; overlap: as above; same: every track has the same cuts. */
  readonly tie: "free" | "overlap" | "same";
}

export interface Partition {
  readonly problem: PartitionProblem;
  readonly parts: readonly number[];
  readonly cuts: readonly Cuts[];
  readonly cost: number;
}

interface Pattern {
  readonly problem: PartitionProblem;
  readonly tracks: readonly (readonly Cuts[])[];
  readonly parts: readonly number[];
  readonly cost: number;
  readonly bound: number;
}

/** Later cuts first, so that of equal costs the first found is the one preferred. */
const byLaterCuts = (a: Cuts, b: Cuts): number => b.first - a.first || b.second - a.second;

/** Among equal costs: fewer parts, then longer parts first, then each track's later cuts. */
function compare(a: Partition, b: Partition): number {
  if (a.cost !== b.cost) return a.cost - b.cost;
  if (a.parts.length !== b.parts.length) return a.parts.length - b.parts.length;
  for (let i = 0; i < a.parts.length; i++) {
    const difference = b.parts[i]! - a.parts[i]!;
    if (difference !== 0) return difference;
  }
  for (let k = 0; k < a.cuts.length; k++) {
    const difference = byLaterCuts(a.cuts[k]!, b.cuts[k]!);
    if (difference !== 0) return difference;
  }
  return 0;
}

/**
 * The best partitions, at most one for each pattern of parts, best first.
 * @param problems one for each length to choose from
 * @param keep how many to return at most
 */
export function solvePartitions(problems: readonly PartitionProblem[], keep: number): readonly Partition[] {
  const patterns = problems.flatMap(boundPatterns).sort((a, b) => a.bound - b.bound);
  const best: Partition[] = [];
  for (const pattern of patterns) {
    const worst = best.length < keep ? Infinity : best[keep - 1]!.cost;
    if (pattern.bound > worst) break;
    const found = cutTracks(pattern);
    if (found === null || found.cost > worst) continue;
    best.push(found);
    best.sort(compare);
    if (best.length > keep) best.pop();
  }
  return best;
}

/** Every allowed pattern of a problem, with the least cost it could have if all its cuts were aligned. */
function boundPatterns(problem: PartitionProblem): Pattern[] {
  let leastCuts = 0;
  for (const cuts of problem.tracks) {
    let least = Infinity;
    for (const cut of cuts) if (cut.cost < least) least = cut.cost;
    leastCuts += least;
  }
  if (leastCuts === Infinity) return [];
  const tracks = problem.tracks.map((cuts) => [...cuts].sort(byLaterCuts));
  const patterns: Pattern[] = [];
  const parts: number[] = [];
  const extend = (start: number, cost: number): void => {
    const index = parts.length;
    const fixed = problem.fixedSizes.get(index);
    const left = problem.length - start;
    const place = (size: number, sizeCost: number, last: boolean): void => {
      if (last ? size !== left : size >= left) return;
      if (problem.ends.get(start + size) === false) return;
      for (let inside = start + 1; inside < start + size; inside++)
        if (problem.ends.get(inside) === true) return;
      const before = index === 0 ? size : parts[index - 1]!;
      const total = cost + sizeCost + Math.max(0, size - before) * problem.growthCost;
      parts.push(size);
      if (!last) extend(start + size, total);
      else if (!hasFixedBeyond(problem, index)) {
        patterns.push({ problem, tracks, parts: [...parts], cost: total, bound: total + leastCuts });
      }
      parts.pop();
    };
    if (fixed) {
      place(fixed.size, fixed.lastCost, true);
      place(fixed.size, fixed.cost, false);
      return;
    }
    const lastCost = problem.lastSizes.get(left);
    if (lastCost !== undefined) place(left, lastCost, true);
    for (const [size, sizeCost] of problem.sizes) place(size, sizeCost, false);
  };
  extend(0, problem.baseCost);
  return patterns;
}

/** Whether a fixed size names a part beyond the last. */
function hasFixedBeyond(problem: PartitionProblem, lastIndex: number): boolean {
  for (const index of problem.fixedSizes.keys()) if (index > lastIndex) return true;
  return false;
}

/** The best cuts of every track for one pattern; null where no cuts are allowed. */
function cutTracks(pattern: Pattern): Partition | null {
  const { problem, tracks, parts } = pattern;
  const isEnd = new Uint8Array(problem.length + 1);
  let at = 0;
  for (const size of parts) isEnd[(at += size)] = 1;
  const alignedCost = (cut: Cuts): number =>
    cut.cost +
    (cut.first > 0 && isEnd[cut.first] === 0 ? problem.misalignedCost : 0) +
    (isEnd[cut.second] === 0 ? problem.misalignedCost : 0);
  const chosen =
    problem.tie === "same"
      ? cutTogether(tracks, alignedCost)
      : cutAround(tracks, alignedCost, problem.tie, problem.length);
  if (chosen === null) return null;
  return { problem, parts, cuts: chosen.cuts, cost: pattern.cost + chosen.cost };
}

interface Chosen {
  readonly cuts: readonly Cuts[];
  readonly cost: number;
}

/** Each track's best cuts around a common moment t, the best t; or without one when free. */
function cutAround(
  tracks: readonly (readonly Cuts[])[],
  costOf: (cut: Cuts) => number,
  tie: "free" | "overlap",
  length: number,
): Chosen | null {
  const bestCut: (Cuts | undefined)[][] = [];
  const totals = new Float64Array(length + 1);
  for (const cuts of tracks) {
    const least = new Float64Array(length + 1).fill(Infinity);
    const taken: (Cuts | undefined)[] = new Array<Cuts | undefined>(length + 1);
    for (const cut of cuts) {
      const cost = costOf(cut);
      const from = tie === "free" ? 0 : cut.first;
      const to = tie === "free" ? length : cut.second;
      for (let t = from; t <= to; t++) {
        if (cost < least[t]!) {
          least[t] = cost;
          taken[t] = cut;
        }
      }
    }
    for (let t = 0; t <= length; t++) totals[t]! += least[t]!;
    bestCut.push(taken);
  }
  let best: Chosen | null = null;
  for (let t = 0; t <= length; t++) {
    if (totals[t] === Infinity || (best !== null && totals[t]! > best.cost)) continue;
    const cuts = bestCut.map((taken) => taken[t]!);
    if (best === null || totals[t]! < best.cost || isLater(cuts, best.cuts))
      best = { cuts, cost: totals[t]! };
  }
  return best;
}

/** The same cuts for every track. */
function cutTogether(tracks: readonly (readonly Cuts[])[], costOf: (cut: Cuts) => number): Chosen | null {
  const [lead, ...others] = tracks;
  let best: Chosen | null = null;
  for (const cut of lead ?? []) {
    const rest = others.map((cuts) =>
      cuts.find((other) => other.first === cut.first && other.second === cut.second),
    );
    if (rest.some((other) => other === undefined)) continue;
    const cuts = [cut, ...(rest as Cuts[])];
    const cost = cuts.reduce((sum, one) => sum + costOf(one), 0);
    if (best === null || cost < best.cost) best = { cuts, cost };
  }
  return best;
}

function isLater(a: readonly Cuts[], b: readonly Cuts[]): boolean {
  for (let k = 0; k < a.length; k++) {
    const difference = byLaterCuts(a[k]!, b[k]!);
    if (difference !== 0) return difference < 0;
  }
  return false;
}

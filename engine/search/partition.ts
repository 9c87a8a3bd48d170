/**
 * Exact search over partitions of a length into parts, with tracks that are each cut twice. Integer costs; knows
 * nothing of what the parts and tracks mean, and imports nothing of ours.
 *
 * Given lengths to choose from, find the parts p1 … pB (their sizes add up to the length) and for each track two
 * cuts, first <= second, such that one moment t lies between the two cuts of every track, at the least cost:
 * the cost of the sizes, of growth from one part to the next, of each track's own cuts, and of each cut that does
 * not stand at the end of a part. No cut may part the last unit of a part from the rest of it, but for the last part's.
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
  /** Sizes that are fixed, by the part's index from 0. */
  readonly fixedSizes: ReadonlyMap<number, number>;
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
  readonly problem: SortedProblem;
  readonly parts: readonly number[];
  readonly cost: number;
  readonly bound: number;
}

/** A problem with every track's cuts sorted by their own cost. */
interface SortedProblem {
  readonly problem: PartitionProblem;
  readonly tracks: readonly (readonly Cuts[])[];
  /** What the tracks cost at least. */
  readonly leastCuts: number;
}

/** Of equal costs the later cuts are preferred. */
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
  const patterns = problems
    .map(sortTracks)
    .flatMap(boundPatterns)
    .sort((a, b) => a.bound - b.bound);
  const best: Partition[] = [];
  for (const pattern of patterns) {
    const worst = best.length < keep ? Infinity : best[keep - 1]!.cost;
    if (pattern.bound > worst) break;
    const found = cutTracks(pattern, worst - pattern.bound);
    if (found === null || found.cost > worst) continue;
    best.push(found);
    best.sort(compare);
    if (best.length > keep) best.pop();
  }
  return best;
}

function sortTracks(problem: PartitionProblem): SortedProblem {
  const tracks = problem.tracks.map((cuts) => [...cuts].sort((a, b) => a.cost - b.cost));
  const leastCuts = tracks.reduce((sum, cuts) => sum + (cuts[0]?.cost ?? Infinity), 0);
  return { problem, tracks, leastCuts };
}

/** Every allowed pattern of a problem, with the least cost it could have if all its cuts were aligned. */
function boundPatterns(sorted: SortedProblem): Pattern[] {
  const { problem, leastCuts } = sorted;
  if (leastCuts === Infinity) return [];
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
        patterns.push({ problem: sorted, parts: [...parts], cost: total, bound: total + leastCuts });
      }
      parts.pop();
    };
    const lastCost = problem.lastSizes.get(left);
    if (lastCost !== undefined && (fixed === undefined || fixed === left)) place(left, lastCost, true);
    for (const [size, sizeCost] of problem.sizes) {
      if (fixed === undefined || fixed === size) place(size, sizeCost, false);
    }
  };
  extend(0, problem.baseCost);
  return patterns;
}

/** Whether a fixed size names a part beyond the last. */
function hasFixedBeyond(problem: PartitionProblem, lastIndex: number): boolean {
  for (const index of problem.fixedSizes.keys()) if (index > lastIndex) return true;
  return false;
}

/**
 * The best cuts of every track for one pattern; null where no cuts are allowed or all cost more than the slack.
 * @param slack how much more than its bound the pattern may cost and still be kept
 */
function cutTracks(pattern: Pattern, slack: number): Partition | null {
  const { parts } = pattern;
  const { problem, tracks } = pattern.problem;
  const isEnd = new Uint8Array(problem.length + 1);
  let at = 0;
  for (const size of parts) isEnd[(at += size)] = 1;
  const priced: Priced[][] = [];
  let left = slack;
  for (const cuts of tracks) {
    const track = priceCuts(cuts, isEnd, problem.misalignedCost, left);
    if (track.priced.length === 0) return null;
    left -= track.excess;
    priced.push(track.priced);
  }
  const chosen =
    problem.tie === "same" ? cutTogether(priced) : cutAround(priced, problem.tie, problem.length);
  return chosen && { problem, parts, cuts: chosen.cuts, cost: pattern.cost + chosen.cost };
}

interface Priced {
  readonly cut: Cuts;
  /** The cut's own cost and that of its ends off the parts' ends. */
  readonly cost: number;
}

/**
 * A track's cuts with their cost under a pattern. Those that alone use up the slack cannot be in a partition worth
 * keeping and are left out; `excess` is what the track costs at least beyond its own bound.
 */
function priceCuts(
  cuts: readonly Cuts[],
  isEnd: Uint8Array,
  misaligned: number,
  slack: number,
): { priced: Priced[]; excess: number } {
  const priced: Priced[] = [];
  const least = cuts[0]!.cost;
  let excess = Infinity;
  for (const cut of cuts) {
    if (cut.cost > least + slack) break;
    if ((cut.first > 0 && isBeforeEnd(cut.first, isEnd)) || isBeforeEnd(cut.second, isEnd)) continue;
    const off = (cut.first > 0 && isEnd[cut.first] === 0 ? 1 : 0) + (isEnd[cut.second] === 0 ? 1 : 0);
    const cost = cut.cost + off * misaligned;
    if (cost > least + slack) continue;
    priced.push({ cut, cost });
    if (cost - least < excess) excess = cost - least;
  }
  return { priced, excess };
}

/** Whether a cut there would part a part's last unit from the rest of it; the last part's may be. */
function isBeforeEnd(place: number, isEnd: Uint8Array): boolean {
  return place + 1 < isEnd.length - 1 && isEnd[place + 1] === 1;
}

interface Chosen {
  readonly cuts: readonly Cuts[];
  readonly cost: number;
}

/** Each track's best cuts around a common moment t, the best t; or without one when free. */
function cutAround(
  tracks: readonly (readonly Priced[])[],
  tie: "free" | "overlap",
  length: number,
): Chosen | null {
  const bestCut: (Cuts | undefined)[][] = [];
  const totals = new Float64Array(length + 1);
  for (const priced of tracks) {
    const least = new Float64Array(length + 1).fill(Infinity);
    const taken: (Cuts | undefined)[] = new Array<Cuts | undefined>(length + 1);
    for (const { cut, cost } of priced) {
      const from = tie === "free" ? 0 : cut.first;
      const to = tie === "free" ? length : cut.second;
      for (let t = from; t <= to; t++) {
        if (cost > least[t]!) continue;
        if (cost < least[t]! || byLaterCuts(cut, taken[t]!) < 0) {
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
function cutTogether(tracks: readonly (readonly Priced[])[]): Chosen | null {
  const [lead, ...others] = tracks;
  let best: Chosen | null = null;
  for (const one of lead ?? []) {
    const rest = others.map((priced) =>
      priced.find(({ cut }) => cut.first === one.cut.first && cut.second === one.cut.second),
    );
    if (rest.some((other) => other === undefined)) continue;
    const all = [one, ...(rest as Priced[])];
    const cuts = all.map((each) => each.cut);
    const cost = all.reduce((sum, each) => sum + each.cost, 0);
    if (best === null || cost < best.cost || (cost === best.cost && isLater(cuts, best.cuts)))
      best = { cuts, cost };
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

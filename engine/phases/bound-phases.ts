/** Rules M3 and M4: how many weeks a lift may spend in each phase of a preparation. */
import { M3, M4 } from "../rules/model";
import type { PhaseWeeks } from "../why";
import type { Lifter } from "./set-targets";

/** Which of the two rules hold; the others have been given up. */
export interface BoundsHeld {
  readonly M3: boolean;
  readonly M4: boolean;
}

/** The least and the most weeks M3 allows in a phase; no hypertrophy at all is allowed as well. */
function limitsOf(lifter: Lifter): { H: Limits; S: Limits; P: Limits } {
  const isLightBeginnerWoman =
    lifter.level === "beginner" && lifter.sex === "female" && lifter.size === "light";
  const { hypertrophy: H, strength: S, peaking } = M3;
  return {
    H,
    S,
    P: { min: isLightBeginnerWoman ? peaking.minLightBeginnerWoman : peaking.min, max: peaking.max },
  };
}
interface Limits {
  readonly min: number;
  readonly max: number;
}

export function holdsM3(weeks: PhaseWeeks, lifter: Lifter): boolean {
  const { H, S, P } = limitsOf(lifter);
  const within = (value: number, { min, max }: Limits) => value >= min && value <= max;
  return (
    (weeks.hypertrophy === 0 || within(weeks.hypertrophy, H)) &&
    within(weeks.strength, S) &&
    within(weeks.peaking, P)
  );
}

const leastOf = (directedWeeks: number, pct: number): number => Math.floor((directedWeeks * pct) / 100);
const mostOf = (directedWeeks: number, pct: number): number => Math.ceil((directedWeeks * pct) / 100);

export function holdsM4(weeks: PhaseWeeks, directedWeeks: number, lifter: Lifter): boolean {
  const isVeryAdvanced = lifter.level === "very advanced";
  const isHeavyMan = lifter.sex === "male" && lifter.size === "heavy";
  const strengthPct =
    isVeryAdvanced && weeks.hypertrophy === 0
      ? M4.strength.maxPctVeryAdvancedWithoutHypertrophy
      : M4.strength.maxPct;
  const peakingPct = isVeryAdvanced && isHeavyMan ? M4.peaking.maxPctVeryAdvancedHeavyMan : M4.peaking.maxPct;
  return (
    weeks.hypertrophy <= mostOf(directedWeeks, M4.hypertrophy.maxPct) &&
    weeks.strength >= leastOf(directedWeeks, M4.strength.minPct) &&
    weeks.strength <= mostOf(directedWeeks, strengthPct) &&
    weeks.peaking >= leastOf(directedWeeks, M4.peaking.minPct) &&
    weeks.peaking <= mostOf(directedWeeks, peakingPct)
  );
}

/** Every split of a preparation into phases that the rules held allow. Peaking is at least one week: M6. */
export function allowSplits(directedWeeks: number, lifter: Lifter, held: BoundsHeld): PhaseWeeks[] {
  const splits: PhaseWeeks[] = [];
  for (let hypertrophy = 0; hypertrophy < directedWeeks; hypertrophy++) {
    for (let peaking = 1; peaking + hypertrophy <= directedWeeks; peaking++) {
      const split = { hypertrophy, strength: directedWeeks - hypertrophy - peaking, peaking };
      if (held.M3 && !holdsM3(split, lifter)) continue;
      if (held.M4 && !holdsM4(split, directedWeeks, lifter)) continue;
      splits.push(split);
    }
  }
  return splits;
}

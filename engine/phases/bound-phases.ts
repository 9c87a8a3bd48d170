/** Rules M3 and M4: how many weeks a lift may spend in each phase of a preparation. */
import { M3, M4 } from "../rules/model";
import type { PhaseWeeks } from "../why";
import type { Lifter } from "./set-targets";

/** Which of the two rules hold; the others have been given up. */
export interface BoundsHeld {
  readonly M3: boolean;
  readonly M4: boolean;
}

/** Weeks allowed in each phase of a preparation of one length. No hypertrophy at all is always allowed. */
export interface PhaseBounds {
  readonly hypertrophy: { readonly min: number; readonly max: number };
  readonly strength: { readonly min: number; readonly max: number; readonly maxWithoutHypertrophy: number };
  /** At least one week: rule M6. */
  readonly peaking: { readonly min: number; readonly max: number };
}

export function boundPhases(directedWeeks: number, lifter: Lifter, held: BoundsHeld): PhaseBounds {
  const isLightBeginnerWoman =
    lifter.level === "beginner" && lifter.sex === "female" && lifter.size === "light";
  const isVeryAdvanced = lifter.level === "very advanced";
  const isHeavyMan = lifter.sex === "male" && lifter.size === "heavy";
  const leastPct = (pct: number) => (held.M4 ? Math.floor((directedWeeks * pct) / 100) : 0);
  const mostPct = (pct: number) => (held.M4 ? Math.ceil((directedWeeks * pct) / 100) : directedWeeks);
  const least = (weeks: number) => (held.M3 ? weeks : 0);
  const most = (weeks: number) => (held.M3 ? weeks : directedWeeks);
  const without = isVeryAdvanced ? M4.strength.maxPctVeryAdvancedWithoutHypertrophy : M4.strength.maxPct;
  const peakingMin = isLightBeginnerWoman ? M3.peaking.minLightBeginnerWoman : M3.peaking.min;
  const peakingPct = isVeryAdvanced && isHeavyMan ? M4.peaking.maxPctVeryAdvancedHeavyMan : M4.peaking.maxPct;
  return {
    hypertrophy: {
      min: Math.max(1, least(M3.hypertrophy.min)),
      max: Math.min(most(M3.hypertrophy.max), mostPct(M4.hypertrophy.maxPct)),
    },
    strength: {
      min: Math.max(least(M3.strength.min), leastPct(M4.strength.minPct)),
      max: Math.min(most(M3.strength.max), mostPct(M4.strength.maxPct)),
      maxWithoutHypertrophy: Math.min(most(M3.strength.max), mostPct(without)),
    },
    peaking: {
      min: Math.max(1, least(peakingMin), leastPct(M4.peaking.minPct)),
      max: Math.min(most(M3.peaking.max), mostPct(peakingPct)),
    },
  };
}

/** Whether a split keeps within bounds made for its own number of weeks. */
export function isWithin({ hypertrophy, strength, peaking }: PhaseWeeks, bounds: PhaseBounds): boolean {
  const strengthMax = hypertrophy === 0 ? bounds.strength.maxWithoutHypertrophy : bounds.strength.max;
  return (
    (hypertrophy === 0 || (hypertrophy >= bounds.hypertrophy.min && hypertrophy <= bounds.hypertrophy.max)) &&
    strength >= bounds.strength.min &&
    strength <= strengthMax &&
    peaking >= bounds.peaking.min &&
    peaking <= bounds.peaking.max
  );
}

/** Every split of a preparation into phases within the bounds. */
export function allowSplits(directedWeeks: number, bounds: PhaseBounds): PhaseWeeks[] {
  const splits: PhaseWeeks[] = [];
  const { min, max } = bounds.peaking;
  for (let hypertrophy = 0; hypertrophy <= bounds.hypertrophy.max; hypertrophy++) {
    for (let peaking = min; peaking <= Math.min(max, directedWeeks - hypertrophy); peaking++) {
      const split = { hypertrophy, strength: directedWeeks - hypertrophy - peaking, peaking };
      if (isWithin(split, bounds)) splits.push(split);
    }
  }
  return splits;
}

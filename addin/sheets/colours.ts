/**
 * The colours of phases and kinds of week. The phases are three clear steps from light to dark, so that they stay
 * apart in grey print and for colour-blind eyes; a test holds both, and the contrast of every text.
 */
import type { Kind, Phase } from "../../engine";

export interface Colours {
  /** `#RRGGBB` */
  readonly fill: string;
  /** `#RRGGBB` */
  readonly text: string;
}

/** Sand, sea, night. */
export const PHASE_COLOURS: Readonly<Record<Phase, Colours>> = {
  hypertrophy: { fill: "#F0DDB0", text: "#2E2510" },
  strength: { fill: "#58A0A8", text: "#06191B" },
  peaking: { fill: "#3D2C5C", text: "#FFFFFF" },
};

/** Greys, so that they never pass for a phase. */
export const KIND_COLOURS: Readonly<Record<Kind, Colours>> = {
  bridge: { fill: "#FFFFFF", text: "#6A645B" },
  hard: { fill: "#FFFFFF", text: "#24211D" },
  deload: { fill: "#E6E3DE", text: "#3A3631" },
  meet: { fill: "#CBC6BE", text: "#1B1916" },
};

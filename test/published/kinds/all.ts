/** The kinds of published checks, by the `kind` a cases.json names. */
import type { Kind } from "./kind";
import { compareDeloads, compareTradeRange } from "./plans";
import {
  compareClasses,
  compareDots,
  compareGl,
  comparePaperRatios,
  comparePercentiles,
  comparePounds,
} from "./scores";

export const KINDS: Readonly<Record<string, Kind>> = {
  dots: compareDots,
  gl: compareGl,
  classes: compareClasses,
  percentiles: comparePercentiles,
  paperRatios: comparePaperRatios,
  pounds: comparePounds,
  deloads: compareDeloads,
  tradeRange: compareTradeRange,
};

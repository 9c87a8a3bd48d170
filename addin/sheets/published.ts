/** Published findings shown beside a decision: they neither set nor prove its number. */
import type { Decision } from "../../engine";

export interface Published {
  readonly about: Decision["about"];
  readonly finding: string;
  readonly source: string;
}

export const PUBLISHED: readonly Published[] = [
  {
    about: "hardWeeks",
    finding: "strength and physique athletes in a survey deload every 5.6 ± 2.3 weeks, for 6.4 ± 1.7 days",
    source: "Rogerson et al. 2024, Sports Medicine – Open 10:26",
  },
  {
    about: "hardWeeks",
    finding:
      "which sex tires sooner, and by how much, depends on the task; so being a woman adds a small term only, and the coach can set the hard weeks",
    source: "Hunter 2016, Medicine & Science in Sports & Exercise 48(11):2247–2256",
  },
];

/** "Published beside it: … (source)." */
export function publishedText(about: Decision["about"]): string[] {
  return PUBLISHED.filter((one) => one.about === about).map(
    ({ finding, source }) => `Published beside it: ${finding} (${source}).`,
  );
}

/** Published findings beside a decision, in words. */
import { DELOAD_SURVEY, SEX_AND_FATIGUE } from "../../engine";

const spread = ({ mean, sd }: { readonly mean: number; readonly sd: number }): string => `${mean} ± ${sd}`;
const beside = (finding: string, source: string): string => `Published beside it: ${finding} (${source}).`;

/** What stands beside the hard weeks. */
export function publishedOnHardWeeks(): string[] {
  const { everyWeeks, lastsDays } = DELOAD_SURVEY;
  return [
    beside(
      `strength and physique athletes in a survey deload every ${spread(everyWeeks)} weeks, for ${spread(lastsDays)} days`,
      DELOAD_SURVEY.from,
    ),
    beside(
      "which sex tires sooner, and by how much, depends on the task; so being a woman adds a small term only, and the coach can set the hard weeks",
      SEX_AND_FATIGUE.from,
    ),
  ];
}

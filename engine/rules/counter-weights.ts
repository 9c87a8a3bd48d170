/** Published findings shown beside a rule of the trade: they neither set nor prove its number. */
import { printed } from "./sources";

/** How often and how long strength and physique athletes deload, as they report it. */
export const DELOAD_SURVEY = {
  id: "beside.deloadSurvey",
  everyWeeks: { mean: 5.6, sd: 2.3 },
  lastsDays: { mean: 6.4, sd: 1.7 },
  ...printed("Rogerson et al. 2024, Sports Medicine – Open 10:26"),
} as const;

/** Which sex tires sooner, and by how much, depends on the task: no large automatic term for sex. */
export const SEX_AND_FATIGUE = {
  id: "beside.sexAndFatigue",
  ...printed("Hunter 2016, Medicine & Science in Sports & Exercise 48(11):2247–2256"),
} as const;

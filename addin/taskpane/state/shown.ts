/** What the pane shows for one state of the form: the engine's answer with its words, or a fault of ours. */
import { planLifter, type Caution, type DoesNotFit, type Planned, type Problem } from "../../../engine/index";
import { cautionText, nearestText, planInWords, problemText } from "../../sheets/words";
import { readForm } from "../../read/form";
import { describeFault, type Fault } from "./fault";
import type { FormState } from "./form-state";
import { offerPlans, type Offer } from "./offers";
import { sortProblems, type SortedProblems } from "./problems";
import { wordReasons, type Reason } from "./reasons";

export interface ShownPlan {
  readonly kind: "planned";
  readonly problems: SortedProblems;
  /** The engine's answer for the plan chosen, with that plan's own reasons and cautions. */
  readonly answer: Planned;
  readonly words: readonly [string, string];
  readonly offers: readonly Offer[];
  readonly reasons: readonly Reason[];
  readonly cautions: readonly string[];
}

export interface ShownMisfit {
  readonly kind: "doesNotFit";
  readonly problems: SortedProblems;
  readonly answer: DoesNotFit;
  readonly words: readonly string[];
  readonly reasons: readonly Reason[];
  readonly cautions: readonly string[];
}

export type Shown =
  | ShownPlan
  | ShownMisfit
  | { readonly kind: "invalid"; readonly problems: SortedProblems }
  | { readonly kind: "fault"; readonly problems: SortedProblems; readonly fault: Fault };

/** Plans what the form holds and words the answer. The one place where a fault on this path is caught. */
export function showPlan(form: FormState): Shown {
  try {
    return wordAnswer(form);
  } catch (error) {
    return { kind: "fault", problems: { byField: {}, other: [] }, fault: describeFault(error) };
  }
}

function wordAnswer(form: FormState): Shown {
  const input = readForm(form.typed, form.unit);
  const answer = planLifter(input);
  const problems = sortProblems(answer.problems, (problem: Problem) => problemText(problem));
  if (answer.status === "invalid") return { kind: "invalid", problems };
  if (answer.status === "doesNotFit") {
    const reasons = wordReasons(answer.decisions);
    const cautions = wordCautions(answer.cautions);
    return { kind: "doesNotFit", problems, answer, words: nearestText(answer), reasons, cautions };
  }
  const offers = offerPlans(answer, form.choice);
  const choice = offers.findIndex((offer) => offer.chosen);
  const chosen = choice === 0 ? answer : (planLifter(input, { choice }) as Planned);
  return {
    kind: "planned",
    problems,
    answer: chosen,
    words: planInWords(chosen),
    offers,
    reasons: wordReasons(chosen.decisions),
    cautions: wordCautions(chosen.cautions),
  };
}

/** What holds for this plan alone comes before what holds for every plan. */
function wordCautions(cautions: readonly Caution[]): readonly string[] {
  const isGeneral = ({ code }: Caution): boolean => code === "training" || code === "federation";
  const own = cautions.filter((caution) => !isGeneral(caution));
  return [...own, ...cautions.filter(isGeneral)].map(cautionText);
}

/** The plan in words and as a strip, what to beware of, what else was possible, and why. */
import type { ShownPlan } from "../state/shown";
import { AssessmentView } from "./assessment-view";
import { Cautions } from "./cautions";
import { OffersView } from "./offers-view";
import { ReasonsView } from "./reasons-view";
import { Strip } from "./strip";
import { WeeksTable } from "./weeks-table";

export function PlanView({ shown, onChoose }: { shown: ShownPlan; onChoose: (key: string | null) => void }) {
  const { answer, words, offers } = shown;
  return (
    <>
      <section aria-labelledby="mw-plan">
        <h2 id="mw-plan">Plan</h2>
        <p class="mw-lead">{words[0]}</p>
        <p>{words[1]}</p>
        <Strip plan={answer.plan} description={words.join(" ")} />
        <WeeksTable plan={answer.plan} />
      </section>
      <Cautions cautions={shown.cautions} />
      <AssessmentView assessment={answer.assessment} />
      {offers.length > 1 && <OffersView offers={offers} onChoose={onChoose} />}
      <ReasonsView reasons={shown.reasons} />
    </>
  );
}

/** Why nothing fits, and what would: other days, and the plan that bends least. */
import type { FormField } from "../../read/form";
import { dayText } from "../../sheets/words";
import type { ShownMisfit } from "../state/shown";
import { AssessmentView } from "./assessment-view";
import { Cautions } from "./cautions";
import { ReasonsView } from "./reasons-view";
import { Strip } from "./strip";
import { WeeksTable } from "./weeks-table";

interface Props {
  readonly shown: ShownMisfit;
  readonly onType: (field: FormField, text: string) => void;
}

export function MisfitView({ shown, onType }: Props) {
  const { earliestMeetDate, latestStartDate, plan } = shown.answer.nearest;
  // The last line is about the nearest plan, where there is one.
  const split = plan === null ? shown.words.length : shown.words.length - 1;
  return (
    <>
      <section aria-labelledby="mw-plan">
        <h2 id="mw-plan">No plan fits</h2>
        <div class="mw-note mw-questioned">
          {shown.words.slice(0, split).map((line) => (
            <p key={line}>{line}</p>
          ))}
          <div class="mw-ways">
            {earliestMeetDate !== null && (
              <button type="button" onClick={() => onType("meetDate", earliestMeetDate)}>
                Move the meet to {dayText(earliestMeetDate)}
              </button>
            )}
            {latestStartDate !== null && (
              <button type="button" onClick={() => onType("startDate", latestStartDate)}>
                Start on {dayText(latestStartDate)}
              </button>
            )}
          </div>
        </div>
      </section>
      {plan !== null && (
        <section aria-labelledby="mw-nearest">
          <h2 id="mw-nearest">Nearest plan, not to be written</h2>
          <p>{shown.words[split]}</p>
          <Strip plan={plan.plan} description={shown.words[split] ?? ""} />
          <WeeksTable plan={plan.plan} />
        </section>
      )}
      <Cautions cautions={shown.cautions} />
      <AssessmentView assessment={shown.answer.assessment} />
      <ReasonsView reasons={shown.reasons} />
    </>
  );
}

/** The strip's content as a table. */
import { LIFTS, type Plan } from "../../../engine/index";
import { shortDay } from "../state/days";

export function WeeksTable({ plan }: { plan: Plan }) {
  return (
    <details class="mw-fold">
      <summary>As a table</summary>
      <div class="mw-scroll" tabIndex={0} role="region" aria-label="Weeks of the plan">
        <table>
          <thead>
            <tr>
              {["Week", "From", "To meet", "Kind", "Meso", "Squat", "Bench", "Deadlift"].map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {plan.weeks.map((week) => (
              <tr key={week.week} class={`mw-kind-${week.kind}`}>
                <th scope="row">{week.week}</th>
                <td>{shortDay(week.startDate)}</td>
                <td>{week.weeksToMeet}</td>
                <td>{week.kind}</td>
                <td>{week.mesocycle ?? "–"}</td>
                {LIFTS.map((lift) => (
                  <td key={lift}>{week.phase === null ? "–" : week.phase[lift]}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}

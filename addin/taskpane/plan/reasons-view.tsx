/** Why every number is what it is: one fold per decision. */
import type { Reason } from "../state/reasons";

export function ReasonsView({ reasons }: { reasons: readonly Reason[] }) {
  return (
    <section aria-labelledby="mw-why">
      <h2 id="mw-why">Why</h2>
      <div class="mw-reasons">
        {reasons.map((reason) => (
          <ReasonView key={reason.title} reason={reason} />
        ))}
      </div>
    </section>
  );
}

function ReasonView({ reason }: { reason: Reason }) {
  return (
    <details class="mw-fold">
      <summary>{reason.title}</summary>
      {reason.because.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {reason.rejected.length > 0 && (
        <>
          <p class="mw-quiet">Passed over</p>
          <ul>
            {reason.rejected.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </>
      )}
      {reason.sources.length > 0 && (
        <>
          <p class="mw-quiet">Sources</p>
          <ul>
            {reason.sources.map((source) => (
              <li key={source}>{source}</li>
            ))}
          </ul>
        </>
      )}
    </details>
  );
}

import type { Fault } from "./state/fault";

/** A fault of the add-in, with what to do about it. */
export function FaultView({ fault }: { fault: Fault }) {
  return (
    <section class="mw-note mw-refused" role="alert">
      <p>
        <strong>{fault.title}</strong>
      </p>
      <p>{fault.advice}</p>
      <details>
        <summary>Details</summary>
        <pre class="mw-details">{fault.details}</pre>
      </details>
    </section>
  );
}

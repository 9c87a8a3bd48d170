/** The button that writes the plan shown, and what came of it. */
import { useEffect, useState } from "preact/hooks";
import type { Workbook } from "../workbook/port";
import { FaultView } from "./fault-view";
import { whyNotWrite } from "./state/announcement";
import type { Shown } from "./state/shown";
import { writePlan, type WriteReport } from "./state/write-plan";

export function WriteBar({ workbook, shown }: { workbook: Workbook; shown: Shown }) {
  const [report, setReport] = useState<WriteReport | null>(null);
  const [isWriting, setWriting] = useState(false);
  useEffect(() => setReport(null), [shown]);
  const whyNot = whyNotWrite(shown);
  const write = async (): Promise<void> => {
    if (shown.kind !== "planned" || isWriting) return;
    setWriting(true);
    setReport(await writePlan(workbook, shown.answer));
    setWriting(false);
  };
  return (
    <section class="mw-write" aria-label="Write the plan">
      <button
        type="button"
        class="mw-primary"
        aria-disabled={whyNot !== null || isWriting}
        aria-describedby="mw-write-note"
        onClick={() => void write()}
      >
        {isWriting ? "Writing…" : "Write plan"}
      </button>
      <div id="mw-write-note" class="mw-write-note" role="status">
        {report === null && <p>{whyNot ?? "Adds new sheets; nothing is overwritten."}</p>}
        {report !== null && report.kind !== "fault" && (
          <p class={report.kind === "wrote" ? "mw-wrote" : "mw-refused-text"}>{report.text}</p>
        )}
      </div>
      {report?.kind === "fault" && <FaultView fault={report.fault} />}
    </section>
  );
}

/** The whole pane: form, plan and the button that writes it. */
import { useMemo, useState } from "preact/hooks";
import { FormView } from "./form/form-view";
import { FaultView } from "./fault-view";
import { LiveRegion } from "./live-region";
import type { PaneHost } from "./mount";
import { MisfitView } from "./plan/misfit-view";
import { PlanView } from "./plan/plan-view";
import {
  changeUnit,
  choosePlan,
  conversionHint,
  openForm,
  typeInto,
  type FormState,
} from "./state/form-state";
import { announce } from "./state/announcement";
import { showPlan } from "./state/shown";
import { WriteBar } from "./write-bar";

export function Pane({ host }: { host: PaneHost }) {
  const [form, setForm] = useState<FormState>(() => openForm(host.today));
  const shown = useMemo(() => showPlan(form), [form]);
  return (
    <div class="mw-body">
      <FormView
        form={form}
        problems={shown.problems}
        hint={conversionHint(form)}
        onType={(field, text) => setForm((now) => typeInto(now, field, text))}
        onUnit={(unit) => setForm((now) => changeUnit(now, unit))}
      />
      <div class="mw-result">
        {shown.kind === "planned" && (
          <PlanView shown={shown} onChoose={(key) => setForm((now) => choosePlan(now, key))} />
        )}
        {shown.kind === "doesNotFit" && (
          <MisfitView shown={shown} onType={(field, text) => setForm((now) => typeInto(now, field, text))} />
        )}
        {shown.kind === "invalid" && <NoPlanYet />}
        {shown.kind === "fault" && <FaultView fault={shown.fault} />}
      </div>
      <WriteBar workbook={host.workbook} shown={shown} />
      <LiveRegion text={announce(shown)} />
    </div>
  );
}

function NoPlanYet() {
  return (
    <section aria-labelledby="mw-plan">
      <h2 id="mw-plan">Plan</h2>
      <p class="mw-quiet">The plan appears here as soon as the fields marked above are mended.</p>
    </section>
  );
}

/** The form: who lifts, how much, and between which days. */
import type { Unit } from "../../../engine/index";
import type { FormField } from "../../read/form";
import { weekdayName } from "../state/days";
import type { FormState } from "../state/form-state";
import type { SortedProblems } from "../state/problems";
import { FieldRow, Problems } from "./field-row";
import { FinePoints } from "./fine-points";
import { UnitSwitch } from "./unit-switch";

export interface FormProps {
  readonly form: FormState;
  readonly problems: SortedProblems;
  /** Said after a change of unit. */
  readonly hint: string | null;
  readonly onType: (field: FormField, text: string) => void;
  readonly onUnit: (unit: Unit) => void;
}

export function FormView(props: FormProps) {
  const { form, problems, hint, onUnit } = props;
  return (
    <form
      class="mw-form"
      onSubmit={(event) => event.preventDefault()}
      aria-label="Lifter and meet"
      noValidate
    >
      <div class="mw-header">
        <h1>Meetward</h1>
        <UnitSwitch unit={form.unit} onUnit={onUnit} />
        <p id="mw-unit-hint" class="mw-hint" role="status">
          {hint}
        </p>
      </div>
      <Problems id="mw-problems-form" problems={problems.other} />
      <fieldset>
        <legend>Lifter</legend>
        <FieldRow {...props} fields={["lifter"]} />
        <FieldRow {...props} fields={["sex", "bodyweightKg", "trainingYears"]} />
      </fieldset>
      <fieldset>
        <legend>Bests</legend>
        <FieldRow {...props} fields={["squatKg", "benchKg", "deadliftKg"]} />
      </fieldset>
      <fieldset>
        <legend>Dates</legend>
        <FieldRow
          {...props}
          fields={["startDate", "meetDate"]}
          hints={{
            startDate: weekdayName(form.typed.startDate) ?? undefined,
            meetDate: weekdayName(form.typed.meetDate) ?? undefined,
          }}
        />
      </fieldset>
      <FinePoints {...props} />
    </form>
  );
}

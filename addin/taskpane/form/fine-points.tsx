/** The fields that seldom change, folded away; the fold says what was changed inside it. */
import { useState } from "preact/hooks";
import type { FormField } from "../../read/form";
import { FINE_POINTS, labelOf } from "../state/fields";
import { FieldRow } from "./field-row";
import type { FormProps } from "./form-view";

const NAMES = Object.keys(FINE_POINTS) as (keyof typeof FINE_POINTS)[];

export function FinePoints(props: FormProps) {
  const { form, problems } = props;
  const [isOpen, setOpen] = useState(false);
  const changed = NAMES.filter((field) => form.typed[field] !== FINE_POINTS[field]);
  const needsLook = NAMES.some((field: FormField) => problems.byField[field] !== undefined);
  return (
    <details
      class="mw-fold"
      open={isOpen || needsLook}
      onToggle={(event) => setOpen((event.currentTarget as HTMLDetailsElement).open)}
    >
      <summary>
        Fine points
        <span class="mw-quiet">{summarise(changed.map((field) => labelOf(field).toLowerCase()))}</span>
      </summary>
      <fieldset>
        <legend>Class and recovery</legend>
        <FieldRow {...props} fields={["classLimitKg", "roomInClass"]} />
        <FieldRow {...props} fields={["recovery", "explosive"]} />
      </fieldset>
      <fieldset>
        <legend>In place of the assessment</legend>
        <FieldRow {...props} fields={["level"]} />
        <FieldRow {...props} fields={["hardWeeks", "prepWeeks"]} />
      </fieldset>
      <fieldset>
        <legend>Weeks and lifts</legend>
        <FieldRow {...props} fields={["weekStart", "arrangement"]} />
      </fieldset>
    </details>
  );
}

const summarise = (labels: readonly string[]): string =>
  labels.length === 0 ? " class, recovery, own settings" : ` set: ${labels.join(", ")}`;

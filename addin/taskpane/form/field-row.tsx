/** Fields side by side, with their problems under the row so that words have the pane's full width. */
import { FIELDS, labelOf, unitOf } from "../state/fields";
import type { FormField } from "../../read/form";
import type { ShownProblem } from "../state/problems";
import { Control } from "./control";
import type { FormProps } from "./form-view";

interface Props extends FormProps {
  readonly fields: readonly FormField[];
  readonly hints?: Readonly<Partial<Record<FormField, string | undefined>>>;
}

export function FieldRow({ fields, form, problems, onType, hints = {} }: Props) {
  return (
    <div class={`mw-row mw-row-${fields.length}`}>
      {fields.map((field) => {
        const spec = FIELDS[field];
        const unit = unitOf(field, form.unit);
        const hint = hints[field] ?? spec.hint;
        const own = problems.byField[field] ?? [];
        const described = [hint && `mw-hint-${field}`, own.length > 0 && `mw-problems-${field}`];
        return (
          <div class="mw-field" key={field}>
            <label for={`mw-${field}`}>
              {labelOf(field)}
              {unit !== null && <span class="mw-unit"> {unit}</span>}
            </label>
            <Control
              field={field}
              value={form.typed[field]}
              severity={worstOf(own)}
              describedBy={described.filter(Boolean).join(" ") || undefined}
              onType={onType}
            />
            {hint && (
              <span id={`mw-hint-${field}`} class="mw-hint">
                {hint}
              </span>
            )}
          </div>
        );
      })}
      {fields.map((field) => (
        <Problems key={field} id={`mw-problems-${field}`} problems={problems.byField[field] ?? []} />
      ))}
    </div>
  );
}

export function Problems({ id, problems }: { id: string; problems: readonly ShownProblem[] }) {
  if (problems.length === 0) return null;
  return (
    <div id={id} class="mw-problems">
      {problems.map((problem) => (
        <p
          key={problem.text}
          class={problem.severity === "refused" ? "mw-refused-text" : "mw-questioned-text"}
        >
          {problem.text}
        </p>
      ))}
    </div>
  );
}

function worstOf(problems: readonly ShownProblem[]): ShownProblem["severity"] | null {
  if (problems.some((problem) => problem.severity === "refused")) return "refused";
  return problems.length > 0 ? "questioned" : null;
}

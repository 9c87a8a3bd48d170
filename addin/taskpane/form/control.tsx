/** One native control. Numbers are text fields, so that what is typed stays and can be answered. */
import type { FormField } from "../../read/form";
import { FIELDS } from "../state/fields";
import type { ShownProblem } from "../state/problems";

interface Props {
  readonly field: FormField;
  readonly value: string;
  readonly severity: ShownProblem["severity"] | null;
  readonly describedBy: string | undefined;
  readonly onType: (field: FormField, text: string) => void;
}

export function Control({ field, value, severity, describedBy, onType }: Props) {
  const spec = FIELDS[field];
  const common = {
    id: `mw-${field}`,
    name: field,
    value,
    class: severity === null ? "mw-control" : `mw-control mw-control-${severity}`,
    "aria-invalid": severity === "refused",
    "aria-describedby": describedBy,
  };
  if (spec.kind === "choice") {
    return (
      <select {...common} onChange={(event) => onType(field, event.currentTarget.value)}>
        {spec.blank !== undefined && <option value="">{spec.blank}</option>}
        {spec.options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    );
  }
  return (
    <input
      {...common}
      type={spec.kind === "day" ? "date" : "text"}
      inputMode={spec.kind === "number" || spec.kind === "mass" ? "decimal" : undefined}
      autocomplete="off"
      onInput={(event) => onType(field, event.currentTarget.value)}
    />
  );
}

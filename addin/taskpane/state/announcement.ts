/** What a screen reader hears once typing pauses. */
import { labelOf } from "./fields";
import { refusedFields } from "./problems";
import type { Shown } from "./shown";

export function announce(shown: Shown): string {
  switch (shown.kind) {
    case "planned":
      return `Plan: ${shown.words.join(" ")}`;
    case "doesNotFit":
      return `No plan fits. ${shown.words[0] ?? ""}`;
    case "invalid":
      return `No plan yet. ${whatToMend(shown)}`;
    case "fault":
      return `${shown.fault.title} ${shown.fault.advice}`;
  }
}

/** Why nothing can be written now; null when a plan can be. */
export function whyNotWrite(shown: Shown): string | null {
  switch (shown.kind) {
    case "planned":
      return null;
    case "doesNotFit":
      return "No plan fits between these days, so there is nothing to write.";
    case "invalid":
      return whatToMend(shown);
    case "fault":
      return "There is no plan to write because of a fault of the add-in.";
  }
}

function whatToMend({ problems }: Pick<Shown, "problems">): string {
  const labels = refusedFields(problems).map((field) => labelOf(field));
  if (labels.length === 0) return problems.other.map((problem) => problem.text).join(" ");
  return `Mend first: ${labels.join(", ")}.`;
}

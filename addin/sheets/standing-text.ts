/** How well a rule is founded, said beside the number it led to. */
import type { Sourced } from "../../engine";

/** A rule's source with its standing: what a source prints stands without comment. */
export function standingText({ standing, from }: Sourced): string {
  switch (standing) {
    case "printed":
      return from;
    case "practice":
      return "common practice";
    case "inferred":
      return `inferred: ${from}`;
    case "house":
      return `our choice: ${from}`;
    case "memory":
      return `from memory, unchecked: ${from}`;
  }
}

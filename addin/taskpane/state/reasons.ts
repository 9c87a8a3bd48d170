/** Decisions worded for the pane. */
import type { Decision, Sourced } from "../../../engine/index";
import { decisionText, standingText } from "../../sheets/words";

export interface Reason {
  readonly title: string;
  readonly because: readonly string[];
  readonly rejected: readonly string[];
  /** Each with its standing, unless it is printed. */
  readonly sources: readonly string[];
}

export function wordReasons(decisions: readonly Decision[]): readonly Reason[] {
  return decisions.map((decision) => {
    const { title, because, rejected, sources } = decisionText(decision);
    return { title, because, rejected, sources: distinct(sources) };
  });
}

/** Each source once, though several rows may share it. */
const distinct = (sources: readonly Sourced[]): readonly string[] => [...new Set(sources.map(standingText))];

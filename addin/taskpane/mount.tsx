/** The task pane's door: mounts it into an element of any page. */
import { render } from "preact";
import type { Workbook } from "../workbook/port";
import { Pane } from "./pane";
import { followTheme } from "./theme";
import "./pane.css";

export interface PaneHost {
  readonly workbook: Workbook;
  /** ISO day (yyyy-mm-dd). */
  readonly today: string;
}

/** Shows the pane inside `element`, which it takes over. */
export function mountPane(element: HTMLElement, host: PaneHost): void {
  element.classList.add("mw-pane");
  followTheme(element);
  render(<Pane host={host} />, element);
}

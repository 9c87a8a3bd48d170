/** A fault of ours, in words for the coach. */
export interface Fault {
  readonly title: string;
  readonly advice: string;
  /** What to pass on when reporting it. */
  readonly details: string;
}

export function describeFault(error: unknown): Fault {
  return {
    title: "Meetward itself failed here.",
    advice:
      "This is a fault of the add-in, not of what you typed; your workbook was not changed. Undo your last entry, or close the pane and open it again. If it comes back, please report it with the details below.",
    details: error instanceof Error ? error.message : String(error),
  };
}

/** A line on the terminal that counts the rows of a long run. */

const FROM_ROWS = 200;
const EVERY_ROWS = 50;
const CLEAR_LINE = "\r\u001b[K";

export interface Progress {
  /** Told after each row. */
  readonly done: (rows: number) => void;
  /** Takes the line away, so that something else can be printed. */
  readonly clear: () => void;
}

/** @param total all rows; a short run shows nothing. */
export function startProgress(total: number, isTerminal: boolean, write: (text: string) => void): Progress {
  let isShown = false;
  if (!isTerminal || total < FROM_ROWS) return { done: () => {}, clear: () => {} };
  return {
    done: (rows) => {
      if (rows % EVERY_ROWS !== 0) return;
      write(`${CLEAR_LINE}${rows} of ${total} rows`);
      isShown = true;
    },
    clear: () => {
      if (isShown) write(CLEAR_LINE);
      isShown = false;
    },
  };
}

/** Text from a file, made fit for a terminal. */

/** Control characters (an escape sequence could drive the terminal) as spaces. */
export function printable(text: string): string {
  // eslint-disable-next-line no-control-regex
  return text.replace(/[\u0000-\u001f\u007f-\u009f]+/g, " ");
}

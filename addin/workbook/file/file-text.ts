/** A file writes a character that XML cannot hold as _xHHHH_, so text that looks like that is marked too. */
const LOOKS_ESCAPED = /_(?=x[0-9A-Fa-f]{4}_)/g;
/** The writer escapes control characters itself; these it lets through, and the file would not open. */
const NOT_IN_XML = /[\uFFFE\uFFFF]/g;
/** Halves of characters, which UTF-8 cannot write. */
const HALF = /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;

/** Text as the file must hold it to be read as that text again; a half of a character becomes "\uFFFD". */
export function toFileText(text: string): string {
  return text
    .replace(LOOKS_ESCAPED, "_x005F_")
    .replace(NOT_IN_XML, (character) => `_x${character.charCodeAt(0).toString(16).toUpperCase()}_`)
    .replace(HALF, "\uFFFD");
}

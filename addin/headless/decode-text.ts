/** A file's bytes as text. */

/**
 * Decodes UTF-8 and UTF-16, with or without a byte-order mark; else Windows-1252, which older spreadsheet
 * programs write .csv files in.
 * @returns the text without a mark; null for bytes that are no text.
 */
export function decodeText(bytes: Uint8Array): string | null {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder("utf-16be").decode(bytes);
  if (bytes.includes(0)) return null;
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

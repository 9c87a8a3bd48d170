/** Text from people, made fit for a cell or a sheet's name. Nothing here makes it a formula. */
import { LIMITS } from "../../engine";
import { shortened } from "./count-text";

/** Control characters and halves of characters, which no workbook file can hold. */
const UNWRITABLE =
  // eslint-disable-next-line no-control-regex
  /[\u0000-\u001f\u007f-\u009f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

export function cleanText(text: string): string {
  return text.replace(UNWRITABLE, " ").replace(/\s+/g, " ").trim();
}

export const UNNAMED = "Unnamed lifter";

/** A lifter's name for a cell, cut where it is longer than the engine's limit. */
export function lifterName(lifter: string | null): string {
  const name = cleanText(lifter ?? "");
  return name === "" ? UNNAMED : shortened(name, LIMITS.lifterLength.max);
}

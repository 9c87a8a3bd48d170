import { writeXlsx } from "hucre/xlsx";
import type { SheetModel } from "../../sheets/model";
import { DEFAULT_FONT } from "./cell-style";
import { checkNames, sameName } from "./check-names";
import { toNamedRanges } from "./named-ranges";
import { toFileSheet } from "./to-file-sheet";

export interface FileProperties {
  readonly title: string;
  /** The sheet to open on; the first one when left out. */
  readonly activeSheet?: string;
}

/**
 * The bytes of an .xlsx file that holds these sheets, in their order. Formulas go in without values: the
 * program that opens the file calculates them.
 * @throws on what a file cannot hold, a formula with the add-in's own functions among it
 */
export async function toXlsx(
  models: readonly SheetModel[],
  { title, activeSheet }: FileProperties,
): Promise<Uint8Array> {
  if (models.length === 0) {
    throw new Error("A workbook file needs at least one sheet. Maybe no sheet was made yet.");
  }
  checkNames(models);
  const active = activeSheet === undefined ? 0 : models.findIndex(({ name }) => sameName(name, activeSheet));
  if (active < 0) throw new Error(`The workbook has no sheet "${activeSheet}".`);
  return writeXlsx({
    sheets: models.map(toFileSheet),
    namedRanges: models.flatMap(toNamedRanges),
    properties: { title },
    defaultFont: DEFAULT_FONT,
    activeSheet: active,
  });
}

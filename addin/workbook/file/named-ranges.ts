import type { NamedRange } from "hucre";
import { rangeRef } from "../../sheets/cell-ref";
import type { SheetModel } from "../../sheets/model";

/**
 * A sheet's names, its print area and the rows it repeats on every page. The latter two are names as well; the
 * writer's own settings for them leave out the quotes around a sheet's name.
 */
export function toNamedRanges({ name: sheetName, names, print }: SheetModel): NamedRange[] {
  const sheet = `'${sheetName.replaceAll("'", "''")}'`;
  const ranges: NamedRange[] = names.map(({ name, range }) => {
    const reference = rangeRef(range, "both");
    const [first, last] = reference.split(":");
    return { name, range: `${sheet}!${first === last ? first : reference}` };
  });
  if (print.area) {
    const range = `${sheet}!${rangeRef(print.area, "both")}`;
    ranges.push({ name: "_xlnm.Print_Area", range, scope: sheetName });
  }
  if (print.repeatRows) {
    const [first, last] = print.repeatRows;
    const range = `${sheet}!$${first + 1}:$${last + 1}`;
    ranges.push({ name: "_xlnm.Print_Titles", range, scope: sheetName });
  }
  return ranges;
}

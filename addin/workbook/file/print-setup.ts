import type { PageSetup, WriteSheet } from "hucre";
import type { SheetModel } from "../../sheets/model";

/** The most a file holds as a footer. */
const LONGEST_FOOTER = 255;

/** Print areas and repeated rows are names of the workbook: see toNamedRanges. */
export function toPageSetup({ orientation, fitWidth }: SheetModel["print"]): PageSetup {
  return {
    paperSize: "a4",
    orientation,
    // As many pages down as it takes.
    ...(fitWidth && { fitToPage: true, fitToWidth: 1, fitToHeight: 0 }),
  };
}

export function toFooter({ footer }: SheetModel["print"]): Pick<WriteSheet, "headerFooter"> {
  if (footer === undefined) return {};
  if (footer.length > LONGEST_FOOTER) {
    throw new Error(
      `The footer has ${footer.length} characters and may have ${LONGEST_FOOTER}. Maybe a name in it is long.`,
    );
  }
  return { headerFooter: { oddFooter: footer } };
}

/** A Look in the terms of the file writer. */
import type { CellStyle } from "hucre/xlsx";
import type { Look } from "../../sheets/model";

export const FONT = { name: "Calibri", size: 11 } as const;

const colour = (hex: string) => ({ rgb: hex.replace("#", "").toUpperCase() });

const VERTICAL = { top: "top", middle: "center", bottom: "bottom" } as const;

export function fileStyle(look: Look): CellStyle {
  return {
    font: {
      ...FONT,
      ...(look.size !== undefined && { size: look.size }),
      ...(look.bold && { bold: true }),
      ...(look.italic && { italic: true }),
      ...(look.colour && { color: colour(look.colour) }),
    },
    ...(look.fill && { fill: { type: "pattern", pattern: "solid", fgColor: colour(look.fill) } as const }),
    ...(look.border && { border: fileBorder(look.border) }),
    ...((look.align || look.vertical || look.wrap) && {
      alignment: {
        ...(look.align && { horizontal: look.align }),
        ...(look.vertical && { vertical: VERTICAL[look.vertical] }),
        ...(look.wrap && { wrapText: true }),
      },
    }),
    ...(look.format && { numFmt: look.format }),
  };
}

/** A conditional format says only what it changes; its fill is a background colour. */
export function conditionalStyle(look: Look): CellStyle {
  return {
    ...((look.bold || look.italic || look.colour) && {
      font: {
        ...(look.bold && { bold: true }),
        ...(look.italic && { italic: true }),
        ...(look.colour && { color: colour(look.colour) }),
      },
    }),
    ...(look.fill && {
      fill: {
        type: "pattern",
        pattern: "solid",
        fgColor: colour(look.fill),
        bgColor: colour(look.fill),
      } as const,
    }),
    ...(look.border && { border: fileBorder(look.border) }),
  };
}

function fileBorder(hex: string) {
  const side = { style: "thin", color: colour(hex) } as const;
  return { top: side, bottom: side, left: side, right: side };
}

import type { BorderStyle, CellStyle, Color, FontStyle } from "hucre";
import type { Look } from "../../sheets/model";

/** The font whose digits the column widths count. */
export const DEFAULT_FONT = { name: "Calibri", size: 11 } as const;

/** How a cell looks, complete: what the look leaves open is as in a new workbook. */
export function toCellStyle(look: Look): CellStyle {
  const { align, vertical, wrap, fill, border, format } = look;
  return {
    font: { ...DEFAULT_FONT, ...fontOf(look), size: look.size ?? DEFAULT_FONT.size },
    ...(fill && { fill: { type: "pattern", pattern: "solid", fgColor: toColour(fill) } }),
    ...(border && { border: bordersOf(border) }),
    ...((align || vertical || wrap) && {
      alignment: {
        ...(align && { horizontal: align }),
        ...(vertical && { vertical: vertical === "middle" ? "center" : vertical }),
        ...(wrap && { wrapText: true }),
      },
    }),
    ...(format && { numFmt: format }),
  };
}

const NOT_UNDER_CONDITIONS = ["size", "align", "vertical", "wrap"] as const;

/**
 * What a conditional format changes of a cell's look.
 * @throws when the look asks for what spreadsheet programs cannot change under a condition
 */
export function toConditionalStyle(look: Look): CellStyle {
  for (const property of NOT_UNDER_CONDITIONS) {
    if (look[property] !== undefined) {
      throw new Error(
        `A conditional format cannot change "${property}". Maybe it belongs into the cells' own style.`,
      );
    }
  }
  const font = fontOf(look);
  return {
    ...(Object.keys(font).length > 0 && { font }),
    // Programs differ in which of the two colours of a conditional fill they paint.
    ...(look.fill && {
      fill: {
        type: "pattern",
        pattern: "solid",
        fgColor: toColour(look.fill),
        bgColor: toColour(look.fill),
      },
    }),
    ...(look.border && { border: bordersOf(look.border) }),
    ...(look.format && { numFmt: look.format }),
  };
}

function fontOf({ bold, italic, colour }: Look): FontStyle {
  return {
    ...(bold && { bold }),
    ...(italic && { italic }),
    ...(colour && { color: toColour(colour) }),
  };
}

function bordersOf(colour: string): BorderStyle {
  const side = { style: "thin", color: toColour(colour) } as const;
  return { top: side, right: side, bottom: side, left: side };
}

function toColour(colour: string): Color {
  if (!/^#[0-9a-f]{6}$/i.test(colour)) {
    throw new Error(`The colour "${colour}" is not of the form #RRGGBB. Maybe it is a colour's name.`);
  }
  return { rgb: colour.slice(1).toUpperCase() };
}

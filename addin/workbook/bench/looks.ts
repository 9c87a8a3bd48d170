import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import type { IColorStyle, IStyleData, Nullable } from "@univerjs/core";
import type { Look } from "../../sheets/model";

const HORIZONTAL = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
} as const;

const VERTICAL = {
  top: VerticalAlign.TOP,
  middle: VerticalAlign.MIDDLE,
  bottom: VerticalAlign.BOTTOM,
} as const;

/** The grid's font is wider than the one the sheet model's widths are counted in, so it is set smaller. */
const SIZE_IN_GRID = 10 / 11;
/** Points in the grid of a cell whose look names no size. */
export const PLAIN_SIZE_IN_GRID = 10;

/** A size given by hand comes back in half points, the plain size as none. */
function fromGridSize(size: unknown): number | undefined {
  if (typeof size !== "number" || size === PLAIN_SIZE_IN_GRID) return undefined;
  return Math.round((size / SIZE_IN_GRID) * 2) / 2;
}

function toBorders(colour: string): NonNullable<IStyleData["bd"]> {
  const line = { s: BorderStyleTypes.THIN, cl: { rgb: colour } };
  return { t: line, r: line, b: line, l: line };
}

/** How the grid writes a look down. */
export function toGridStyle(look: Look): IStyleData {
  return {
    ...(look.bold && { bl: BooleanNumber.TRUE }),
    ...(look.italic && { it: BooleanNumber.TRUE }),
    ...(look.size !== undefined && { fs: look.size * SIZE_IN_GRID }),
    ...(look.colour && { cl: { rgb: look.colour } }),
    ...(look.fill && { bg: { rgb: look.fill } }),
    ...(look.align && { ht: HORIZONTAL[look.align] }),
    ...(look.vertical && { vt: VERTICAL[look.vertical] }),
    ...(look.wrap && { tb: WrapStrategy.WRAP }),
    ...(look.border && { bd: toBorders(look.border) }),
    ...(look.format && { n: { pattern: look.format } }),
  };
}

/** The grid's own colour box writes `rgb(1,2,3)`; everything else here is `#RRGGBB`. */
function toHex(colour: Nullable<IColorStyle>): string | undefined {
  const rgb = colour?.rgb;
  if (!rgb) return undefined;
  const parts = /^rgba?\(\s*(\d+)[\s,]+(\d+)[\s,]+(\d+)/.exec(rgb);
  if (!parts) return rgb;
  return (
    "#" +
    parts
      .slice(1)
      .map((part) => Number(part).toString(16).padStart(2, "0"))
      .join("")
      .toUpperCase()
  );
}

function keyOf<Key extends string>(table: Readonly<Record<Key, number>>, value: unknown): Key | undefined {
  return (Object.keys(table) as Key[]).find((key) => table[key] === value);
}

/** What of the grid's style a sheet model can say; fonts and underlines are left behind. */
export function fromGridStyle(style: IStyleData): Look {
  const colour = toHex(style.cl);
  const fill = toHex(style.bg);
  const size = fromGridSize(style.fs);
  const align = keyOf(HORIZONTAL, style.ht);
  const vertical = keyOf(VERTICAL, style.vt);
  const border = toHex((style.bd?.t ?? style.bd?.b ?? style.bd?.l ?? style.bd?.r)?.cl);
  return {
    ...(style.bl === BooleanNumber.TRUE && { bold: true }),
    ...(style.it === BooleanNumber.TRUE && { italic: true }),
    ...(size !== undefined && { size }),
    ...(colour && { colour }),
    ...(fill && { fill }),
    ...(align && { align }),
    ...(vertical && { vertical }),
    ...(style.tb === WrapStrategy.WRAP && { wrap: true }),
    ...(border && { border }),
    ...(style.n?.pattern && { format: style.n.pattern }),
  };
}

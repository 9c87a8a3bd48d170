/** The grid measures in pixels, the sheet model in characters and points. */

const PIXELS_PER_CHARACTER = 7;
const CELL_PADDING_PIXELS = 5;
const PIXELS_PER_POINT = 4 / 3;

/** A column width in characters of the default font, in whole pixels. */
export function widthToPixels(widthCharacters: number): number {
  return Math.round(widthCharacters * PIXELS_PER_CHARACTER + CELL_PADDING_PIXELS);
}

/** A column width in pixels, in characters to two decimals. */
export function pixelsToWidth(pixels: number): number {
  return Math.round(((pixels - CELL_PADDING_PIXELS) / PIXELS_PER_CHARACTER) * 100) / 100;
}

/** A row height in points, in whole pixels. */
export function heightToPixels(heightPoints: number): number {
  return Math.round(heightPoints * PIXELS_PER_POINT);
}

/** A row height in pixels, in points to two decimals. */
export function pixelsToHeight(pixels: number): number {
  return Math.round((pixels / PIXELS_PER_POINT) * 100) / 100;
}

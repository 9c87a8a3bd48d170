/**
 * A worksheet as plain data. Sheets are made here and painted by the workbook ports; rows and columns count
 * from 0, ranges include both ends, dates are serial numbers (1 = 1900-01-01) under a date format.
 */

export type CellValue = string | number | boolean;

export interface Cell {
  readonly row: number;
  readonly column: number;
  /** Text is always written as text, even when it begins with "=". */
  readonly value?: CellValue;
  /** English names and commas, beginning with "=". */
  readonly formula?: string;
  /** A name in the model's `styles`. */
  readonly style?: string;
}

export interface CellRange {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** How a cell looks. Colours are `#RRGGBB`. */
export interface Look {
  readonly bold?: boolean;
  readonly italic?: boolean;
  /** Points. */
  readonly size?: number;
  readonly colour?: string;
  readonly fill?: string;
  readonly align?: "left" | "center" | "right";
  readonly vertical?: "top" | "middle" | "bottom";
  readonly wrap?: boolean;
  /** Thin lines on all four sides, in this colour. */
  readonly border?: string;
  /** A number format such as "0%", "yyyy-mm-dd". */
  readonly format?: string;
}

export type Validation = {
  readonly range: CellRange;
  /** Shown when a value is refused. */
  readonly message: string;
  /** Shown when the cell is selected. */
  readonly prompt?: string;
} & (
  | { readonly kind: "list"; readonly values: readonly string[] }
  | { readonly kind: "whole"; readonly min: number; readonly max: number }
  | { readonly kind: "date"; readonly min: number; readonly max: number }
);

/** Colours the range's cells where a condition holds. Earlier ones win. */
export type ConditionalFormat = { readonly range: CellRange; readonly look: Look } & (
  | { readonly kind: "textIs"; readonly text: string }
  /** A formula for the range's first cell, beginning with "=". */
  | { readonly kind: "formula"; readonly formula: string }
);

export interface SheetModel {
  /** At most 31 characters, none of : \ / ? * [ ]. */
  readonly name: string;
  /** Widths in characters of the default font. */
  readonly columns: readonly { readonly width: number }[];
  /** Heights in points of the rows that differ. */
  readonly rowHeights: Readonly<Record<number, number>>;
  readonly cells: readonly Cell[];
  readonly styles: Readonly<Record<string, Look>>;
  readonly merges: readonly CellRange[];
  readonly freeze: { readonly rows: number; readonly columns: number };
  readonly names: readonly { readonly name: string; readonly range: CellRange }[];
  readonly validations: readonly Validation[];
  readonly conditionalFormats: readonly ConditionalFormat[];
  readonly notes: readonly { readonly row: number; readonly column: number; readonly text: string }[];
  readonly print: {
    readonly orientation: "portrait" | "landscape";
    readonly fitWidth: boolean;
    /** Rows repeated on every page, counted from 0, both ends included. */
    readonly repeatRows?: readonly [number, number];
    readonly area?: CellRange;
    readonly footer?: string;
  };
}

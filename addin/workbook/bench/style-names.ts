import type { IStyleData, IWorkbookData, Nullable } from "@univerjs/core";
import type { Look } from "../../sheets/model";
import { fromGridStyle } from "./looks";
import { styleId } from "./sheet-data";

/**
 * The names of one sheet's styles. A painted cell keeps the name it was painted with; a look that the coach
 * made gets the name of an equal one, or a new name.
 */
export class StyleNames {
  /** Every style in use so far, by name. */
  readonly looks: Record<string, Look> = {};
  private readonly prefix: string;

  constructor(
    sheetId: string,
    private readonly styles: IWorkbookData["styles"],
  ) {
    this.prefix = styleId(sheetId, "");
    for (const [id, style] of Object.entries(styles)) {
      if (id.startsWith(this.prefix) && style)
        this.looks[id.slice(this.prefix.length)] = fromGridStyle(style);
    }
  }

  nameOf(style: Nullable<IStyleData | string>): string | undefined {
    if (typeof style === "string" && style.startsWith(this.prefix)) return style.slice(this.prefix.length);
    const data = typeof style === "string" ? this.styles[style] : style;
    const look = data ? fromGridStyle(data) : {};
    if (Object.keys(look).length === 0) return undefined;
    const wanted = JSON.stringify(look);
    const known = Object.keys(this.looks).find((name) => JSON.stringify(this.looks[name]) === wanted);
    if (known !== undefined) return known;
    const name = `hand ${Object.keys(this.looks).length + 1}`;
    this.looks[name] = look;
    return name;
  }
}

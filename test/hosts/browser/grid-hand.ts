import type { Page } from "playwright-core";
import type { SheetModel } from "../../../addin/sheets/model";

/** Pixels the grid takes up for row numbers, column letters, and a row or column without a size of its own. */
const ROW_HEAD = 46;
const COLUMN_HEAD = 20;
const DEFAULT_ROW = 24;
const DEFAULT_COLUMN = 88;

interface Point {
  readonly x: number;
  readonly y: number;
}

/** A coach's hand on the grid: finds cells on the picture of the active sheet, which must not be scrolled. */
export class GridHand {
  constructor(
    private readonly page: Page,
    private readonly model: Pick<SheetModel, "columns" | "rowHeights">,
  ) {}

  /** Clicks a cell of the active sheet, types over it and presses Enter. */
  async typeInto(row: number, column: number, text: string): Promise<void> {
    await this.startTyping(row, column, text);
    await this.page.keyboard.press("Enter");
  }

  /** Types over a cell and leaves it open. */
  async startTyping(row: number, column: number, text: string): Promise<void> {
    await this.clickOn(row, column);
    await this.page.keyboard.type(text);
  }

  async clickOn(row: number, column: number): Promise<void> {
    const { x, y } = await this.origin();
    const inside = this.insideCanvas(row, column);
    await this.page.mouse.click(x + inside.x, y + inside.y);
  }

  /** By the menu over the row's number. */
  async insertRowAbove(row: number): Promise<void> {
    const { x, y } = await this.origin();
    const inside = this.insideCanvas(row, 0);
    await this.page.mouse.click(x + ROW_HEAD / 2, y + inside.y, { button: "right" });
    // Its middle is the box for the number of rows.
    await this.page.getByRole("button", { name: "rows above" }).click({ position: { x: 16, y: 16 } });
  }

  /** The colour painted near a cell's lower left corner, `#RRGGBB`; "none" when nothing is. */
  async colourAt(row: number, column: number): Promise<string> {
    const { x, y } = this.insideCanvas(row, column);
    const point = { x: x - this.width(column) / 2 + 4, y: y + this.height(row) / 2 - 4 };
    return this.page.evaluate(({ x, y }) => {
      const canvas = [...document.querySelectorAll<HTMLCanvasElement>("#grid canvas")].reduce((a, b) =>
        a.width * a.height > b.width * b.height ? a : b,
      );
      const scale = canvas.width / canvas.getBoundingClientRect().width;
      const pixel = canvas.getContext("2d")!.getImageData(x * scale, y * scale, 1, 1).data;
      if (pixel[3] === 0) return "none";
      const hex = [...pixel].slice(0, 3).map((part) => part.toString(16).padStart(2, "0"));
      return `#${hex.join("")}`.toUpperCase();
    }, point);
  }

  private async origin(): Promise<Point> {
    return this.page.evaluate(() => {
      const boxes = [...document.querySelectorAll("#grid canvas")].map((canvas) =>
        canvas.getBoundingClientRect(),
      );
      const { x, y } = boxes.reduce((a, b) => (a.width * a.height > b.width * b.height ? a : b));
      return { x, y };
    });
  }

  private insideCanvas(row: number, column: number): Point {
    let x = ROW_HEAD + this.width(column) / 2;
    for (let before = 0; before < column; before++) x += this.width(before);
    let y = COLUMN_HEAD + this.height(row) / 2;
    for (let before = 0; before < row; before++) y += this.height(before);
    return { x, y };
  }

  private width(column: number): number {
    const characters = this.model.columns[column]?.width;
    return characters === undefined ? DEFAULT_COLUMN : Math.round(characters * 7 + 5);
  }

  private height(row: number): number {
    const points = this.model.rowHeights[row];
    return points === undefined ? DEFAULT_ROW : Math.round((points * 4) / 3);
  }
}

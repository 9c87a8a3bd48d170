/**
 * A real spreadsheet program for the tests: LibreOffice, compiled to WebAssembly, in a process of its own. It opens a
 * workbook's bytes, recalculates every formula written without a result, and saves in another format.
 */
import path from "node:path";
import { Readable } from "node:stream";
import { createSubprocessConverter } from "@matbee/libreoffice-converter/server";
import ExcelJS from "exceljs";

type Converter = Awaited<ReturnType<typeof createSubprocessConverter>>;
type Format = "xlsx" | "pdf" | "png" | "csv" | "ods";

export class SpreadsheetProgram {
  private constructor(private readonly converter: Converter) {}

  /** Starts in about three seconds. */
  static async start(): Promise<SpreadsheetProgram> {
    const wasmPath = path.join(
      path.dirname(require.resolve("@matbee/libreoffice-converter/package.json")),
      "wasm",
    );
    return new SpreadsheetProgram(await createSubprocessConverter({ wasmPath }));
  }

  async convert(xlsx: Uint8Array, outputFormat: Format): Promise<Uint8Array> {
    const { data } = await this.converter.convert(
      xlsx,
      { inputFormat: "xlsx", outputFormat },
      "workbook.xlsx",
    );
    return data;
  }

  /** The workbook after the program recalculated it, read by an independent reader. */
  async recalculate(xlsx: Uint8Array): Promise<ExcelJS.Workbook> {
    return readWorkbook(await this.convert(xlsx, "xlsx"));
  }

  async stop(): Promise<void> {
    await this.converter.destroy();
  }
}

/** Reads a workbook's bytes by a library that had no part in writing them. */
export async function readWorkbook(xlsx: Uint8Array): Promise<ExcelJS.Workbook> {
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.read(Readable.from(Buffer.from(xlsx)));
  return workbook;
}

/** What a cell shows: a formula's result in place of the formula. */
export function shownValue(cell: ExcelJS.Cell): ExcelJS.CellValue {
  const { value } = cell;
  if (value !== null && typeof value === "object" && ("formula" in value || "sharedFormula" in value)) {
    return (value as { result?: ExcelJS.CellValue }).result ?? null;
  }
  return value;
}

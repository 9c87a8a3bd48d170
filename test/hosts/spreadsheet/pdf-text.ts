/**
 * The text on each page of a PDF that the spreadsheet program wrote. Only as much of PDF as that program uses: one
 * content stream a page, one-byte codes, a ToUnicode table a font, fonts shared by all pages.
 */
import { inflateSync } from "node:zlib";

/** @returns one list a page: the pieces of text in the order they were drawn, at least one a cell */
export function pageTexts(pdf: Uint8Array): string[][] {
  const objects = readObjects(pdf);
  const fonts = readFonts(objects);
  const pages = [...objects.values()].filter(({ head }) => /\/Type\s*\/Page\b(?!s)/.test(head));
  if (pages.length === 0 || fonts.size === 0) throw new Error("No pages or no fonts. Maybe it is no PDF.");
  return pages.map(({ head }) => piecesOf(streamOf(objects, /\/Contents (\d+) 0 R/, head), fonts));
}

interface PdfObject {
  readonly head: string;
  readonly stream: string | undefined;
}

function readObjects(pdf: Uint8Array): Map<number, PdfObject> {
  const bytes = Buffer.from(pdf);
  const text = bytes.toString("latin1");
  const objects = new Map<number, PdfObject>();
  for (const found of text.matchAll(/(?<=^|[\r\n])(\d+) 0 obj\s([^]*?)(?:endobj|stream\r?\n)/g)) {
    const [whole, number, head] = found as unknown as [string, string, string];
    const start = found.index + whole.length;
    const hasText = whole.endsWith("stream\n") && /FlateDecode/.test(head) && !/\/Length1/.test(head);
    const stream = hasText
      ? inflateSync(bytes.subarray(start, text.indexOf("endstream", start))).toString("latin1")
      : undefined;
    objects.set(Number(number), { head, stream });
  }
  return objects;
}

function streamOf(objects: Map<number, PdfObject>, reference: RegExp, head: string): string {
  const stream = objects.get(Number(reference.exec(head)?.[1]))?.stream;
  if (stream === undefined)
    throw new Error(`No stream behind ${head}. Maybe the program writes PDF otherwise.`);
  return stream;
}

type Codes = ReadonlyMap<string, string>;

/** Fonts by the name that content streams use, such as F1. */
function readFonts(objects: Map<number, PdfObject>): Map<string, Codes> {
  const fonts = new Map<string, Codes>();
  for (const { head } of objects.values()) {
    for (const [, name, number] of head.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
      const font = objects.get(Number(number));
      if (!font || !/\/Type\s*\/Font\b/.test(font.head)) continue;
      fonts.set(name!, readCodes(streamOf(objects, /\/ToUnicode (\d+) 0 R/, font.head)));
    }
  }
  return fonts;
}

const utf16 = (hex: string): string =>
  String.fromCharCode(...hex.match(/.{4}/g)!.map((unit) => Number.parseInt(unit, 16)));

function readCodes(table: string): Codes {
  const pairs = table.matchAll(/^<([0-9A-F]{2})> <((?:[0-9A-F]{4})+)>$/gim);
  return new Map([...pairs].map(([, code, hex]) => [code!.toUpperCase(), utf16(hex!)]));
}

/** Each text object is one piece, whatever fonts it changes between. */
function piecesOf(content: string, fonts: Map<string, Codes>): string[] {
  return [...content.matchAll(/\bBT\b([^]*?)\bET\b/g)].map(([, drawn]) => {
    let codes: Codes | undefined;
    let piece = "";
    for (const [, font, hex] of drawn!.matchAll(/\/(F\d+) [\d.]+ Tf|<([0-9A-F]+)>/gi)) {
      if (font !== undefined) codes = fonts.get(font);
      else
        piece += hex!
          .match(/.{2}/g)!
          .map((code) => codes?.get(code.toUpperCase()) ?? "\uFFFD")
          .join("");
    }
    return piece;
  });
}

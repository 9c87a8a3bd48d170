/** A file of lifters, read as far as it goes without judging any of them. */
import { readFileSync } from "node:fs";
import { extname } from "node:path";
import type { RowRead } from "../read/answer-row";
import { readCsv } from "../read/csv";
import { readTable, type LifterRow } from "../read/table";
import { tellTableProblem } from "../read/table-problem";
import { BadCall } from "./bad-call";
import { decodeText } from "./decode-text";
import { findJsonFault } from "./json-fault";

export interface Roster {
  readonly rows: readonly RowRead[];
  /** The file holds one request and not a list. */
  readonly isSingle: boolean;
  /** What is wrong with the file as a whole. */
  readonly notices: readonly string[];
}

/** Throws BadCall for a file that is missing, of another kind, or broken. */
export function readRoster(file: string): Roster {
  const kind = extname(file).toLowerCase();
  if (kind !== ".json" && kind !== ".csv") {
    throw new BadCall(
      `${file}: given a ${kind === "" ? "file without an ending" : `${kind} file`}; allowed: .json, .csv.`,
    );
  }
  const text = readText(file);
  return kind === ".json" ? readRequests(file, text) : readLifters(file, text);
}

function readText(file: string): string {
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(file);
  } catch (problem) {
    const code = (problem as NodeJS.ErrnoException).code;
    const why =
      code === "ENOENT"
        ? "there is no such file"
        : code === "EISDIR"
          ? "it is a folder"
          : `it cannot be read (${code})`;
    throw new BadCall(`${file}: ${why}.`);
  }
  const text = decodeText(bytes);
  if (text === null) throw new BadCall(`${file}: it is no text file. Save the sheet as .csv first.`);
  return text;
}

function readRequests(file: string, text: string): Roster {
  const content = parseJson(file, text);
  if (typeof content !== "object" || content === null) {
    throw new BadCall(`${file}: it holds a single value; allowed: one request in braces, or a list of them.`);
  }
  const requests: readonly unknown[] = Array.isArray(content) ? content : [content];
  const rows = requests.map((input, index) => ({ row: index + 1, input, problems: [] }));
  return { rows, isSingle: !Array.isArray(content), notices: [] };
}

function parseJson(file: string, text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    const { line, column, found } = findJsonFault(text);
    throw new BadCall(`${file}: no valid JSON: line ${line}, column ${column}: ${found} cannot stand here.`);
  }
}

function readLifters(file: string, text: string): Roster {
  let cells: string[][];
  try {
    cells = readCsv(text);
  } catch (problem) {
    throw new BadCall(`${file}: ${(problem as Error).message}.`);
  }
  const table = readTable(cells);
  return {
    rows: table.rows.filter((row): row is LifterRow => row.kind === "lifter"),
    isSingle: false,
    notices: table.problems.map((problem) => tellTableProblem(problem).message),
  };
}

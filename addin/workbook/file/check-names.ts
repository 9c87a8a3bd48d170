import type { SheetModel } from "../../sheets/model";

const LONGEST_SHEET_NAME = 31;
const LONGEST_RANGE_NAME = 255;

/** Spreadsheet programs do not tell capitals from small letters in names. */
export function sameName(one: string, other: string): boolean {
  return one.toLowerCase() === other.toLowerCase();
}

/** @throws when a sheet or a range has a name that a workbook cannot hold, or that another one has */
export function checkNames(models: readonly SheetModel[]): void {
  const sheetNames = models.map(({ name }) => name);
  const rangeNames = models.flatMap(({ names }) => names.map(({ name }) => name));
  sheetNames.forEach(checkSheetName);
  rangeNames.forEach(checkRangeName);
  refuseTaken("sheet", sheetNames);
  refuseTaken("range", rangeNames);
}

function refuseTaken(kind: string, names: readonly string[]): void {
  const taken = new Set<string>();
  for (const name of names) {
    const key = name.toLowerCase();
    if (taken.has(key)) throw new Error(`The ${kind} name "${name}" is taken; nothing was written.`);
    taken.add(key);
  }
}

function checkSheetName(name: string): void {
  const isAllowed =
    name.trim() !== "" &&
    name.length <= LONGEST_SHEET_NAME &&
    !/[:\\/?*[\]]/.test(name) &&
    !/^'|'$/.test(name) &&
    !sameName(name, "History");
  if (!isAllowed) {
    throw new Error(
      `A sheet cannot be named "${name}" (${name.length} characters). Maybe it is longer than ${LONGEST_SHEET_NAME} ` +
        "characters, holds one of : \\ / ? * [ ], begins or ends with ', or is History, which programs keep for themselves.",
    );
  }
}

/** Also what reads as a cell: Q1, R1C1, R, C. */
const READS_AS_CELL = /^([a-z]{1,3}[0-9]+|r[0-9]*c?[0-9]*|c[0-9]*)$/i;

function checkRangeName(name: string): void {
  const isAllowed =
    /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name) &&
    name.length <= LONGEST_RANGE_NAME &&
    !READS_AS_CELL.test(name) &&
    !/^_xl/i.test(name);
  if (!isAllowed) {
    throw new Error(
      `A range cannot be named "${name}". Maybe it holds a blank or a sign, begins with a digit, or reads as a cell.`,
    );
  }
}

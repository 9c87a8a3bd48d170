import { tokenise, type Token } from "./formula-tokens";
import { FUTURE_PREFIX, GIVES_ARRAY } from "./future-functions";

/** The most a cell's formula holds, in UTF-16 units. */
const LONGEST_FORMULA = 8192;
const OWN_FUNCTION = /^MEETWARD\./i;

/** A formula as a file spells it. */
export interface FileFormula {
  /** Without "=". */
  readonly text: string;
  /** It may give several values, and must be marked to do so. */
  readonly isArray: boolean;
}

/** An open bracket, and the names that LET or LAMBDA have given within it. */
interface Level {
  readonly caller: string;
  readonly names: Set<string>;
  position: number;
  atStart: boolean;
}

/**
 * Spells a formula for a file: without "=", functions younger than the file format and the names within LET
 * and LAMBDA with their prefixes.
 * @param place where the formula stands, for messages
 * @throws when the formula uses the add-in's own functions, whose values belong into a file instead
 */
export function toFileFormula(formula: string, place: string): FileFormula {
  if (!formula.startsWith("=") || formula.length > LONGEST_FORMULA) {
    throw new Error(
      `The formula at ${place} does not begin with "=" or has more than ${LONGEST_FORMULA} characters: ${formula.slice(0, 60)}. Maybe it is text.`,
    );
  }
  const tokens = tokenise(formula.slice(1));
  const levels: Level[] = [];
  let text = "";
  let isArray = false;
  tokens.forEach((token, index) => {
    const next = following(tokens, index);
    if (token.kind === "sign") {
      refuseSpillSigns(token, formula, place);
      moveThrough(token.text, levels, tokens[index - 1]);
      text += token.text;
      return;
    }
    const level = levels.at(-1);
    if (token.kind === "name") {
      const isCall = tokens[index + 1]?.text === "(";
      if (isCall) refuseOwn(token.text, formula, place);
      if (level && givesName(level, next)) level.names.add(token.text.toLowerCase());
      isArray ||= isCall && GIVES_ARRAY.has(token.text.toUpperCase());
      text += prefixOf(token.text, isCall, levels, tokens[index - 1]);
    }
    if (level && token.kind !== "blank") level.atStart = false;
    text += token.text;
  });
  return { text, isArray };
}

function following(tokens: readonly Token[], index: number): string | undefined {
  const next = tokens[index + 1];
  return next?.kind === "blank" ? tokens[index + 2]?.text : next?.text;
}

function prefixOf(
  name: string,
  isCall: boolean,
  levels: readonly Level[],
  before: Token | undefined,
): string {
  if (before?.text !== "!" && levels.some(({ names }) => names.has(name.toLowerCase()))) return "_xlpm.";
  return isCall ? (FUTURE_PREFIX.get(name.toUpperCase()) ?? "") : "";
}

/** LET(name, value, …, result), LAMBDA(name, …, result): a name fills its place, and is not the last. */
function givesName({ caller, position, atStart }: Level, next: string | undefined): boolean {
  return atStart && next === "," && (caller === "LAMBDA" || (caller === "LET" && position % 2 === 0));
}

function moveThrough(sign: string, levels: Level[], before: Token | undefined): void {
  const level = levels.at(-1);
  if (sign === "(" || sign === "{") {
    if (level) level.atStart = false;
    const caller = sign === "(" && before?.kind === "name" ? before.text.toUpperCase() : "";
    levels.push({ caller, names: new Set(), position: 0, atStart: true });
  } else if (sign === ")" || sign === "}") {
    levels.pop();
  } else if (level) {
    level.atStart = sign === ",";
    if (sign === ",") level.position += 1;
  }
}

function refuseOwn(name: string, formula: string, place: string): void {
  if (OWN_FUNCTION.test(name)) {
    throw new Error(
      `${place} uses ${name}, which a file cannot carry: ${formula}. Maybe its values were meant to go in.`,
    );
  }
}

/** A file spells "A1#" and "@A1" as functions of their own; no sheet of ours uses them. */
function refuseSpillSigns({ text }: Token, formula: string, place: string): void {
  if (text === "#" || text === "@") {
    throw new Error(
      `${place} uses "${text}", which is not written to files: ${formula}. Maybe a range will do.`,
    );
  }
}

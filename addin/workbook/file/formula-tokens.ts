/** The parts of a formula, as far as a file cares. */
export interface Token {
  readonly kind: "text" | "sheet" | "brackets" | "error" | "number" | "name" | "blank" | "sign";
  readonly text: string;
}

/** In the order in which they are tried. A name is a function, a reference or a defined name. */
const KINDS: readonly (readonly [Token["kind"], RegExp])[] = [
  ["text", /"(?:[^"]|"")*"/y],
  ["sheet", /'(?:[^']|'')*'/y],
  ["brackets", /\[(?:[^[\]]|\[[^\]]*\])*\]/y],
  ["error", /#(?:N\/A|DIV\/0!|[A-Z_]+[!?])/iy],
  ["name", /[\p{L}_\\$][\p{L}\p{N}_.?\\$]*/uy],
  ["number", /(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:e[+-]?[0-9]+)?/iy],
  ["blank", /\s+/y],
  ["sign", /[^]/uy],
];

/** Every character of the formula stands in exactly one token. */
export function tokenise(formula: string): Token[] {
  const tokens: Token[] = [];
  for (let at = 0; at < formula.length; at += tokens.at(-1)!.text.length) {
    for (const [kind, pattern] of KINDS) {
      pattern.lastIndex = at;
      const found = pattern.exec(formula);
      if (!found) continue;
      tokens.push({ kind, text: found[0] });
      break;
    }
  }
  return tokens;
}

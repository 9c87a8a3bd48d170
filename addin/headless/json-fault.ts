/** Where a JSON text stops being JSON: the parser's own messages do not always say. */

export interface JsonFault {
  readonly line: number;
  readonly column: number;
  /** What stands there, or "the end of the file". */
  readonly found: string;
}

const TOKEN =
  /[ \t\r\n]*(?:(?<punctuation>[{}[\],:])|(?<text>"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*")|(?<value>(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)(?![\w.+-])))/y; // eslint-disable-line no-control-regex

/** @param text a text that JSON.parse refuses. */
export function findJsonFault(text: string): JsonFault {
  const open: ("{" | "[")[] = [];
  /** What may come next, each by the first character of its token; v stands for any value. */
  let wanted = "v";
  let at = 0;
  for (;;) {
    TOKEN.lastIndex = at;
    const token = TOKEN.exec(text);
    if (token === null) break;
    const { punctuation, text: string } = token.groups!;
    const start = TOKEN.lastIndex - (punctuation ?? string ?? token.groups!["value"])!.length;
    const next = step(punctuation ?? (string === undefined ? "value" : "text"), wanted, open);
    if (next === null) return place(text, start);
    wanted = next;
    at = TOKEN.lastIndex;
  }
  return place(text, at + /^[ \t\r\n]*/.exec(text.slice(at))![0].length);
}

/** What may follow a token, or null where the token itself may not stand. */
function step(token: string, wanted: string, open: ("{" | "[")[]): string | null {
  const afterValue = () => (open.length === 0 ? "" : open.at(-1) === "{" ? ",}" : ",]");
  if (token === "text" && wanted.includes("k")) return ":";
  if (token === "text" || token === "value") return wanted.includes("v") ? afterValue() : null;
  if (token === "{" || token === "[") {
    if (!wanted.includes("v")) return null;
    open.push(token);
    return token === "{" ? "k}" : "v]";
  }
  if (!wanted.includes(token)) return null;
  if (token === ":") return "v";
  if (token === ",") return open.at(-1) === "{" ? "k" : "v";
  open.pop();
  return afterValue();
}

function place(text: string, at: number): JsonFault {
  const lines = text.slice(0, at).split(/\r\n|\r|\n/);
  const rest = [...text.slice(at, at + 20)][0];
  return {
    line: lines.length,
    column: [...lines.at(-1)!].length + 1,
    found: rest === undefined ? "the end of the file" : `"${rest}"`,
  };
}

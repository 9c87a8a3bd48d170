/** Headless runs inside the test's own process, in a folder of their own. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { run } from "../../../addin/headless/run";

export interface Told {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

export const folder = mkdtempSync(join(tmpdir(), "meetward-"));
export const removeFolder = () => rmSync(folder, { recursive: true });

let count = 0;

/** Writes a file and gives its path. */
export function put(content: string | Uint8Array, ending: string): string {
  const path = join(folder, `file-${++count}${ending}`);
  writeFileSync(path, content);
  return path;
}

export async function call(args: readonly string[], terminal = { out: false, err: false }): Promise<Told> {
  let [out, err] = ["", ""];
  const code = await run(args, {
    out: async (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    terminal,
  });
  return { code, out, err };
}

/** The parsed result of a run that answered. */
// eslint-disable-next-line @typescript-eslint/no-explicit-any -- tests look into plain JSON
export async function callJson(file: string): Promise<any> {
  const { code, out, err } = await call([file, "--json"]);
  if (code !== 0) throw new Error(`exit code ${code}: ${err}`);
  return JSON.parse(out);
}

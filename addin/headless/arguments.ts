/** What was asked for on the command line. */
import { parseArgs } from "node:util";
import { BadCall } from "./bad-call";

export const USAGE = `npm run -s plan -- FILE [--json] [--out FILE.xlsx] [--force]

  FILE          a .json request, or a list of them; or a .csv roster, one lifter a row
  --json        print results as JSON instead of text
  --out FILE    write the plans into a new workbook (.xlsx)
  --force       let --out replace a file that exists`;

export interface Call {
  readonly file: string;
  readonly json: boolean;
  readonly out: string | null;
  readonly force: boolean;
}

/** @returns null when only the usage was asked for. Throws BadCall for arguments that are not understood. */
export function readArguments(given: readonly string[]): Call | null {
  const { values, positionals } = parse(given);
  if (values.help === true) return null;
  const [file, ...more] = positionals;
  if (file === undefined) throw new BadCall(`No file given.\n\n${USAGE}`);
  if (more.length > 0) throw new BadCall(`Given ${positionals.length} files; allowed: one.\n\n${USAGE}`);
  const out = values.out ?? null;
  if (out !== null && !/\.xlsx$/i.test(out))
    throw new BadCall(`--out: given "${out}"; allowed: a name ending in .xlsx.`);
  if (values.force === true && out === null) throw new BadCall("--force goes with --out FILE.xlsx.");
  return { file, json: values.json ?? false, out, force: values.force ?? false };
}

function parse(given: readonly string[]) {
  try {
    return parseArgs({
      args: [...given],
      allowPositionals: true,
      options: {
        json: { type: "boolean" },
        out: { type: "string" },
        force: { type: "boolean" },
        help: { type: "boolean", short: "h" },
      },
    });
  } catch (problem) {
    throw new BadCall(`${problem instanceof Error ? problem.message : String(problem)}\n\n${USAGE}`);
  }
}

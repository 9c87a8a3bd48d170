/** A spreadsheet program installed on the machine: LibreOffice by its command, where there is one. */
import { execFile, execFileSync } from "node:child_process";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { promisify } from "node:util";

const CONVERT_MS = 120_000;

/** The command that answers, or null. */
export function findInstalledProgram(): string | null {
  for (const command of ["soffice", "libreoffice"]) {
    try {
      execFileSync(command, ["--version"], { stdio: "ignore", timeout: 30_000 });
      return command;
    } catch {
      // Not on this machine; try the next.
    }
  }
  return null;
}

/** Saves `input` as `output`, whose name must be the input's but for its ending. The profile lies in `folder`. */
export async function convertByCommand(
  command: string,
  input: string,
  output: string,
  folder: string,
): Promise<void> {
  const profile = pathToFileURL(path.join(folder, "profile")).href;
  const format = path.extname(output).slice(1);
  const args = [`-env:UserInstallation=${profile}`, "--headless", "--convert-to", format];
  await promisify(execFile)(command, [...args, "--outdir", path.dirname(output), input], {
    timeout: CONVERT_MS,
  });
}

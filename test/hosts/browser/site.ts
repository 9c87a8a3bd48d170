import { execFile } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync } from "node:fs";
import { join, resolve } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { promisify } from "node:util";

const ROOT = resolve(__dirname, "../../..");
const CACHE = join(ROOT, "node_modules/.cache/meetward-bench");
const SOURCES = ["addin", "engine", "webpack.config.js", "package-lock.json", "tsconfig.json"];
const STALE_LOCK_MS = 180_000;

/**
 * Builds the bench page as `npm run build` does and returns its folder. The same sources are built once:
 * later runs, and test files that run side by side, take what is there.
 */
export async function buildBenchSite(): Promise<string> {
  const name = hashSources();
  const folder = join(CACHE, name);
  const lock = join(CACHE, `${name}.lock`);
  mkdirSync(CACHE, { recursive: true });
  while (!existsSync(folder)) {
    if (!take(lock)) await sleep(250);
    else {
      try {
        if (!existsSync(folder)) await build(folder);
      } finally {
        rmSync(lock, { recursive: true, force: true });
      }
    }
  }
  return folder;
}

async function build(folder: string): Promise<void> {
  const unfinished = `${folder}.unfinished`;
  const webpack = join(ROOT, "node_modules/webpack/bin/webpack.js");
  const args = [webpack, "--config-name", "bench", "--mode", "production", "--output-path", unfinished];
  await promisify(execFile)(process.execPath, args, { cwd: ROOT }).catch((fault: { stdout: string }) => {
    throw new Error(`The bench page does not build:\n${fault.stdout || String(fault)}`);
  });
  for (const old of readdirSync(CACHE)) {
    const path = join(CACHE, old);
    if (path !== unfinished && !old.endsWith(".lock")) rmSync(path, { recursive: true, force: true });
  }
  renameSync(unfinished, folder);
}

/** True when the lock is ours now. One left behind by a run that was killed is cleared away. */
function take(lock: string): boolean {
  try {
    mkdirSync(lock);
    return true;
  } catch {
    const since = statSync(lock, { throwIfNoEntry: false })?.mtimeMs;
    if (since !== undefined && Date.now() - since > STALE_LOCK_MS)
      rmSync(lock, { recursive: true, force: true });
    return false;
  }
}

function hashSources(): string {
  const hash = createHash("sha256");
  for (const file of SOURCES.flatMap((source) => filesOf(join(ROOT, source)))) {
    hash.update(file.slice(ROOT.length)).update(readFileSync(file));
  }
  return hash.digest("hex").slice(0, 16);
}

function filesOf(path: string): string[] {
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path)
    .sort()
    .flatMap((entry) => filesOf(join(path, entry)));
}

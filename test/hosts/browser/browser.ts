import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { chromium } from "playwright-core";
import type { Browser, LaunchOptions } from "playwright-core";

/** Nothing the browser does on its own account may leave the machine. */
const KEEP_TO_ITSELF = [
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-client-side-phishing-detection",
  "--disable-default-apps",
  "--disable-domain-reliability",
  "--disable-sync",
  "--metrics-recording-only",
  "--no-first-run",
  "--no-pings",
];

/**
 * Starts a real browser without a window: on Linux the one that an npm package carries, elsewhere the
 * installed Chrome or Edge. Close it when done.
 */
export async function launchBrowser(): Promise<Browser> {
  if (process.platform === "linux") return chromium.launch(packagedBrowser());
  try {
    return await chromium.launch({ channel: "chrome", args: KEEP_TO_ITSELF });
  } catch {
    return chromium.launch({ channel: "msedge", args: KEEP_TO_ITSELF });
  }
}

/** In a container there is neither a sandbox nor a graphics card, and shared memory is small. */
const IN_A_CONTAINER = [
  "--no-sandbox",
  "--disable-dev-shm-usage",
  "--use-gl=angle",
  "--use-angle=swiftshader",
];

function packagedBrowser(): LaunchOptions {
  const printed = execFileSync(process.execPath, [join(__dirname, "unpack-chromium.mjs")], {
    encoding: "utf8",
  });
  const { executablePath, env } = JSON.parse(printed) as {
    executablePath: string;
    env: Record<string, string>;
  };
  return { executablePath, args: [...IN_A_CONTAINER, ...KEEP_TO_ITSELF], env: { ...process.env, ...env } };
}

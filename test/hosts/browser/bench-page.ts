import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { launchBrowser } from "./browser";
import { buildBenchSite } from "./site";
import { serveFolder } from "./static-server";
import type { StaticServer } from "./static-server";

/** The bench page in a real browser, and all that went wrong or abroad while it was open. */
export class BenchPage {
  /** Addresses asked for outside the page's own server. */
  readonly strayRequests: string[] = [];
  /** Uncaught faults and error lines of the page's console. */
  readonly faults: string[] = [];

  private constructor(
    readonly page: Page,
    private readonly browser: Browser,
    private readonly server: StaticServer,
  ) {}

  static async open(options: BrowserContextOptions = {}): Promise<BenchPage> {
    const server = await serveFolder(await buildBenchSite());
    const browser = await launchBrowser();
    const bench = new BenchPage(await browser.newPage(options), browser, server);
    await bench.load();
    return bench;
  }

  private async load(): Promise<void> {
    const isOurs = (url: string) => url.startsWith(`${this.server.origin}/`) || /^(data|blob):/.test(url);
    await this.page.route(/.*/, async (route) => {
      const url = route.request().url();
      if (isOurs(url)) return route.continue();
      this.strayRequests.push(url);
      return route.abort();
    });
    this.page.on("websocket", (socket) => this.strayRequests.push(socket.url()));
    this.page.on("pageerror", (fault) => this.faults.push(fault.stack ?? String(fault)));
    this.page.on("console", (line) => line.type() === "error" && this.faults.push(line.text()));
    await this.page.goto(this.server.origin);
    await this.page
      .waitForFunction(() => "meetwardBench" in window)
      .catch((fault: Error) => {
        throw new Error(`The bench page did not start. ${this.faults.join("\n")}`, { cause: fault });
      });
  }

  /** Waits until the grid has done what it puts off: painting, and checking cells against their validations. */
  async settle(): Promise<void> {
    await this.page.waitForTimeout(300);
    await this.page.evaluate(() => new Promise((resolve) => requestIdleCallback(resolve)));
  }

  /** Closes browser and server; throws when the page asked for anything beyond its own server. */
  async close(): Promise<void> {
    await this.browser.close();
    await this.server.close();
    if (this.strayRequests.length > 0)
      throw new Error(`Requests left the page: ${this.strayRequests.join(", ")}`);
  }
}

import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
};

export interface StaticServer {
  /** For example http://127.0.0.1:40123 */
  readonly origin: string;
  close(): Promise<void>;
}

/** Serves the files of a folder to this machine alone, on a port that is free. */
export async function serveFolder(folder: string): Promise<StaticServer> {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? "/", "http://localhost");
    const file = join(folder, normalize(pathname === "/" ? "/index.html" : decodeURIComponent(pathname)));
    readFile(file).then(
      (content) => response.writeHead(200, { "content-type": TYPES[extname(file)] ?? "" }).end(content),
      () => response.writeHead(404).end(),
    );
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  return {
    origin: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

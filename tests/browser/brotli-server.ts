/** Serves a built folder with Brotli, as static hosts do. */
import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";
import { brotliCompressSync } from "node:zlib";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json",
};

export interface BrotliServer {
  /** Where the folder opens, with a slash at the end. */
  url: string;
  close(): void;
}

/** On a free port of 127.0.0.1. Each file is pressed once, at the best quality. */
export async function serveByBrotli(folder: string): Promise<BrotliServer> {
  const pressed = new Map<string, Buffer>();
  const bodyOf = (path: string) => {
    const known = pressed.get(path);
    if (known) return known;
    const body = brotliCompressSync(readFileSync(join(folder, path)));
    pressed.set(path, body);
    return body;
  };
  const server = createServer(({ url = "/" }, response) => {
    const path = normalize(new URL(url, "http://localhost").pathname);
    try {
      const file = path.endsWith("/") ? join(path, "index.html") : path;
      const body = bodyOf(file);
      const type = TYPES[extname(file)] ?? "application/octet-stream";
      response.writeHead(200, { "content-type": type, "content-encoding": "br" }).end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}/`,
    close() {
      server.closeAllConnections();
      server.close();
    },
  };
}

/** A proxy that every request of a page and its workers goes through: it passes on what is for the app alone. */
import { existsSync } from "node:fs";
import { createServer, request } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import type { Browser, BrowserContext } from "playwright-core";

export interface Asked {
  method: string;
  /** The whole address, or host and port where a tunnel was asked for (TLS, WebSocket). */
  address: string;
  /** Bytes that went along with it. */
  sent: number;
}

export interface WatchingProxy {
  address: string;
  asked: readonly Asked[];
  close(): Promise<void>;
}

/** Chromium asks its maker what fields of a page are for, and tries TLS first, whatever the page says. */
export const NO_HELP_WITH_FORMS =
  "--disable-features=AutofillServerCommunication,HttpsUpgrades,HttpsFirstBalancedModeAutoEnable";

/** The proxy is that of the pages alone: Chromium asks its maker for things by itself. */
export const watchedPhone = (browser: Browser, proxy: WatchingProxy): Promise<BrowserContext> =>
  browser.newContext({
    viewport: { width: 390, height: 844 },
    proxy: { server: proxy.address, bypass: "<-loopback>" },
  });

/**
 * What was more than to ask the app's own folder for one of its files; the query tells its versions
 * apart.
 * @param app the address of that folder
 */
export const moreThanFiles = (asked: readonly Asked[], app: string, folder: string): Asked[] =>
  asked.filter(({ method, address, sent }) => {
    const [path = "", query] = address.slice(app.length).split("?");
    const isPlain = query === undefined || /^__WB_REVISION__=[0-9a-f]{32}$/.test(query);
    const isFile = address.startsWith(app) && isPlain && existsSync(join(folder, path));
    return !isFile || method !== "GET" || sent > 0;
  });

/** @param app the start of the addresses that are let through */
export async function watchRequests(app: string): Promise<WatchingProxy> {
  const asked: Asked[] = [];
  const server = createServer((from, to) => {
    const one = { method: from.method ?? "", address: from.url ?? "", sent: 0 };
    asked.push(one);
    from.on("data", (piece: Buffer) => {
      one.sent += piece.length;
    });
    if (!one.address.startsWith(app)) {
      to.writeHead(502).end();
      return;
    }
    const { method = "GET", headers } = from;
    const onward = request(one.address, { method, headers }, (answer) => {
      to.writeHead(answer.statusCode ?? 502, answer.headers);
      answer.pipe(to);
    });
    onward.on("error", () => to.destroy());
    from.pipe(onward);
  });
  server.on("connect", ({ method = "", url = "" }, socket) => {
    asked.push({ method, address: url, sent: 0 });
    socket.end("HTTP/1.1 502 Bad Gateway\r\n\r\n");
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}`,
    asked,
    close: () =>
      new Promise<void>((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

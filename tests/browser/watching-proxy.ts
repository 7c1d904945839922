/** A proxy that every request of a page and its workers goes through: it passes on what is for the app alone. */
import { createServer, request } from "node:http";
import type { AddressInfo } from "node:net";

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

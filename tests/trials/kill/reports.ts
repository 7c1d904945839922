import type { AddressInfo } from "node:net";
import { WebSocketServer } from "ws";

/** Takes what pages report, on a free port of 127.0.0.1. */
export class Reports<Report extends string> {
  /** Called with each report, at once. */
  hear: (report: Report) => void = () => {};
  readonly address: string;
  readonly #server: WebSocketServer;

  private constructor(server: WebSocketServer) {
    this.#server = server;
    this.address = `ws://127.0.0.1:${(server.address() as AddressInfo).port}`;
    server.on("connection", (socket) => {
      // A killed browser says no goodbye.
      socket.on("error", () => {});
      socket.on("message", (data) => this.hear(String(data) as Report));
    });
  }

  static open<Report extends string>(): Promise<Reports<Report>> {
    return new Promise((done) => {
      const server = new WebSocketServer({ host: "127.0.0.1", port: 0 });
      server.on("listening", () => done(new Reports<Report>(server)));
    });
  }

  /** Resolves once every page that reported is gone, and all that it sent was heard. */
  async silence(): Promise<void> {
    const last = [...this.#server.clients];
    await Promise.all(
      last.map((socket) => new Promise<void>((done) => socket.once("close", () => done()))),
    );
  }

  close(): Promise<void> {
    for (const socket of this.#server.clients) socket.terminate();
    return new Promise((done) => this.#server.close(() => done()));
  }
}

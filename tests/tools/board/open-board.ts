/** Opens a board on this machine: keys, configuration, server, stream. */
import type { ChildProcess } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type JetStreamManager, jetstreamManager } from "@nats-io/jetstream";
import { connectTo } from "../../../src/board/connection.ts";
import { configuration, type Place, streamConfig } from "./configuration.ts";
import { Issuer } from "./credentials.ts";
import { runNatsServer } from "./nats-server.ts";
import { nodeSocket } from "./node-socket.ts";

/** What the server keeps beside the messages themselves. */
const STORE_FACTOR = 2;

export interface BoardOptions extends Place {
  board: string;
  /** For the configuration and the store. */
  folder: string;
}

export class OpenBoard {
  readonly issuer: Issuer;
  readonly options: BoardOptions;
  readonly file: string;
  #server: ChildProcess;

  private constructor(options: BoardOptions, issuer: Issuer, file: string, server: ChildProcess) {
    this.options = options;
    this.issuer = issuer;
    this.file = file;
    this.#server = server;
  }

  static async open(options: BoardOptions): Promise<OpenBoard> {
    const { folder, board, mostBytes } = options;
    mkdirSync(folder, { recursive: true });
    const issuer = await Issuer.open(mostBytes * STORE_FACTOR);
    const file = join(folder, "nats.conf");
    const place = { ...options, mostBytes: mostBytes * STORE_FACTOR };
    writeFileSync(file, configuration(issuer.trust, place), { mode: 0o600 });
    const server = await runNatsServer(file);
    const opened = new OpenBoard(options, issuer, file, server);
    await opened.asKeeper((manager) => manager.streams.add(streamConfig(board, mostBytes)));
    return opened;
  }

  /** On this machine, whatever name phones reach it by. */
  get localAddress(): string {
    return `ws${this.options.tls ? "s" : ""}://127.0.0.1:${this.options.port}`;
  }

  /** An invitation to a seat. @param address where phones reach the board */
  invite(seat: string, until: number, address = this.localAddress) {
    return this.issuer.seat({ address, board: this.options.board, seat }, until);
  }

  /** Ends the server, at once and unannounced if `signal` is SIGKILL. */
  async stop(signal: "SIGTERM" | "SIGKILL" = "SIGTERM"): Promise<void> {
    if (this.#server.exitCode !== null || this.#server.signalCode !== null) return;
    const ended = once(this.#server, "exit");
    this.#server.kill(signal);
    await ended;
  }

  /** Starts it again on the same configuration and store. */
  async restart(): Promise<void> {
    this.#server = await runNatsServer(this.file);
  }

  /** Does some work with all rights in the board's account. */
  async asKeeper(work: (manager: JetStreamManager) => Promise<unknown>): Promise<void> {
    const keeper = { ...(await this.issuer.keeper()), address: this.localAddress, seat: "keeper" };
    const connection = await connectTo(keeper, nodeSocket);
    try {
      await work(await jetstreamManager(connection));
    } finally {
      await connection.close();
    }
  }
}

/** Opens a board on this machine: keys, configuration, server, stream. */
import type { ChildProcess } from "node:child_process";
import { once } from "node:events";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type JetStreamManager, jetstreamManager } from "@nats-io/jetstream";
import { connectTo } from "../../../src/board/connection.ts";
import { streamOf } from "../../../src/board/subjects.ts";
import { configuration, type Place, streamConfig } from "./configuration.ts";
import { Issuer } from "./credentials.ts";
import { runNatsServer } from "./nats-server.ts";
import { socketTo } from "./node-socket.ts";

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

  /** Opens it anew, or again on what the folder holds: then earlier invitations stay good. */
  static async open(options: BoardOptions): Promise<OpenBoard> {
    const { folder, board, mostBytes } = options;
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    const issuer = await issuerOf(folder, mostBytes * STORE_FACTOR);
    const file = join(folder, "nats.conf");
    const place = { ...options, mostBytes: mostBytes * STORE_FACTOR };
    writeFileSync(file, configuration(issuer.trust, place), { mode: 0o600 });
    const server = await runNatsServer(file);
    const opened = new OpenBoard(options, issuer, file, server);
    try {
      await opened.asKeeper((manager) => makeStream(manager, board, mostBytes));
    } catch (cause) {
      await opened.stop();
      throw cause;
    }
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

  /** Resolves once the server has ended, whatever ended it. */
  async ended(): Promise<void> {
    await once(this.#server, "exit");
  }

  /** Starts it again on the same configuration and store. */
  async restart(): Promise<void> {
    this.#server = await runNatsServer(this.file);
  }

  /** Does some work with all rights in the board's account. */
  async asKeeper(work: (manager: JetStreamManager) => Promise<unknown>): Promise<void> {
    const keeper = { ...(await this.issuer.keeper()), address: this.localAddress, seat: "keeper" };
    const connection = await connectTo(keeper, socketTo(this.options.tls?.name));
    try {
      await work(await jetstreamManager(connection));
    } finally {
      await connection.close();
    }
  }
}

async function makeStream(manager: JetStreamManager, board: string, mostBytes: number) {
  const names = await manager.streams.names().next();
  if (!names.includes(streamOf(board))) await manager.streams.add(streamConfig(board, mostBytes));
}

/** With the key that the folder keeps, or a new one that it keeps from now on. */
async function issuerOf(folder: string, mostBytes: number): Promise<Issuer> {
  const file = join(folder, "account.seed");
  const kept = existsSync(file) ? readFileSync(file, "utf8").trim() : undefined;
  const issuer = await Issuer.open(mostBytes, kept);
  if (!kept) writeFileSync(file, issuer.seed, { mode: 0o600 });
  return issuer;
}

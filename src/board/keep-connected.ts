/** Stays with a board through lost networks, a server that starts anew, and refusals. */
import { errors, type NatsConnection } from "@nats-io/nats-core";
import type { Invitation } from "./invitation.ts";
import { type BoardReason, isLasting } from "./reasons.ts";
import { reasonOf } from "./trouble.ts";

const FIRST_PAUSE_MS = 1000;
const LONGEST_PAUSE_MS = 60_000;
/** Trying again at once mends no refusal, and a full board is not made emptier by being asked. */
const PAUSE_AFTER_REFUSAL_MS = 15 * 60_000;

export interface KeepOptions {
  invitation: Invitation;
  connect(invitation: Invitation): Promise<NatsConnection>;
  /**
   * What is done with each connection; it goes on until it fails, or is told to stop, which it is
   * also when its connection is lost.
   * @param progress called whenever the board gave or took something
   */
  work(connection: NatsConnection, progress: () => void, stop: AbortSignal): Promise<void>;
  onTrouble(reason: BoardReason): void;
  /** 0 to 1: phones that lost the same server must not all come back in the same second. */
  random?(): number;
}

/** Connects again and again until it is stopped. */
export class KeptConnection {
  readonly #options: KeepOptions;
  readonly #stopping = new AbortController();
  #failures = 0;
  #goOn = () => {};

  constructor(options: KeepOptions) {
    this.#options = options;
    void this.#run();
  }

  /** Tries again now, as when the network is back. */
  hurry(): void {
    this.#goOn();
  }

  stop(): void {
    this.#stopping.abort();
    this.#goOn();
  }

  async #run(): Promise<void> {
    const { signal } = this.#stopping;
    while (!signal.aborted) {
      const reason = await this.#once(signal);
      if (signal.aborted) return;
      this.#options.onTrouble(reason);
      await this.#pause(this.#pauseMs(reason));
    }
  }

  /** @returns why it ended */
  async #once(stop: AbortSignal): Promise<BoardReason> {
    const { invitation, connect, work } = this.#options;
    const progress = () => {
      this.#failures = 0;
    };
    const over = new AbortController();
    const end = () => over.abort();
    stop.addEventListener("abort", end, { once: true });
    let connection: NatsConnection | undefined;
    try {
      connection = await connect(invitation);
      const working = work(connection, progress, over.signal);
      await Promise.race([working, closing(connection), aborted(over.signal)]);
      throw new errors.ClosedConnectionError();
    } catch (cause) {
      const lost = connection?.isClosed() ? await connection.closed() : undefined;
      return reasonOf(lost ?? cause, invitation, Date.now());
    } finally {
      stop.removeEventListener("abort", end);
      end();
      void connection?.close();
    }
  }

  #pauseMs(reason: BoardReason): number {
    if (isLasting(reason)) return PAUSE_AFTER_REFUSAL_MS;
    const longest = Math.min(FIRST_PAUSE_MS * 2 ** this.#failures, LONGEST_PAUSE_MS);
    this.#failures += 1;
    return longest * (0.5 + 0.5 * (this.#options.random ?? Math.random)());
  }

  #pause(ms: number): Promise<void> {
    return new Promise((done) => {
      const timer = setTimeout(done, ms);
      this.#goOn = () => {
        clearTimeout(timer);
        done();
      };
    });
  }
}

/** Fails once the connection is lost. */
async function closing(connection: NatsConnection): Promise<never> {
  throw (await connection.closed()) ?? new errors.ClosedConnectionError();
}

const aborted = (signal: AbortSignal): Promise<void> =>
  new Promise((done) => {
    if (signal.aborted) done();
    signal.addEventListener("abort", () => done(), { once: true });
  });

/** Reads a board from the server's stream. */
import { type JsMsg, jetstream, jetstreamManager } from "@nats-io/jetstream";
import type { NatsConnection } from "@nats-io/nats-core";
import type { Invitation } from "./invitation.ts";
import { type KeepOptions, KeptConnection } from "./keep-connected.ts";
import { unpacked } from "./message.ts";
import type { BoardReader, Receive } from "./reader.ts";
import type { BoardReason } from "./reasons.ts";
import { seatIn, streamOf } from "./subjects.ts";

export interface NatsReaderOptions {
  invitation: Invitation;
  connect: KeepOptions["connect"];
  /** All that was there is read: from now on it is news. */
  onLive(): void;
  onTrouble(reason: BoardReason): void;
  /** It is another board under the same name: what was read before is not on it. */
  onAnew?(): void;
}

export class NatsReader implements BoardReader {
  readonly #options: NatsReaderOptions;
  #kept: KeptConnection | undefined;
  /** The place of the last message that was passed on; 0 before the first. */
  #last = 0;
  /** When the board that was read last was made, in the server's own words. */
  #made: string | undefined;

  constructor(options: NatsReaderOptions) {
    this.#options = options;
  }

  start(receive: Receive): void {
    const { invitation, connect, onTrouble } = this.#options;
    this.#kept = new KeptConnection({
      ...{ invitation, connect, onTrouble },
      work: (connection, progress, stop) => this.#read(connection, receive, progress, stop),
    });
  }

  stop(): void {
    this.#kept?.stop();
  }

  /** Tries again now, as when the network is back. */
  hurry(): void {
    this.#kept?.hurry();
  }

  async #read(
    connection: NatsConnection,
    receive: Receive,
    progress: () => void,
    stop: AbortSignal,
  ): Promise<void> {
    const stream = streamOf(this.#options.invitation.board);
    const manager = await jetstreamManager(connection, { checkAPI: false });
    const { state, created } = await manager.streams.info(stream);
    if (this.#made !== undefined && created !== this.#made) {
      this.#last = 0;
      this.#options.onAnew?.();
    }
    this.#made = created;
    // A board that lost its newest messages, in a power cut, gives their places to others.
    if (state.last_seq < this.#last) this.#last = 0;
    const until = state.last_seq;
    if (this.#last >= until) this.#options.onLive();
    const consumers = jetstream(connection).consumers;
    const consumer = await consumers.get(stream, { opt_start_seq: this.#last + 1 });
    progress();
    const messages = await consumer.consume();
    stop.addEventListener("abort", () => void messages.close(), { once: true });
    for await (const message of messages) {
      this.#take(message, receive);
      progress();
      if (message.seq === until) this.#options.onLive();
    }
  }

  #take(message: JsMsg, receive: Receive): void {
    const { subject, seq: place, time } = message;
    this.#last = place;
    receive({ seat: seatIn(subject), subject, place, at: time.getTime() }, unpacked(message.data));
  }
}

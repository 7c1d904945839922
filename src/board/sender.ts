/** Takes what waits in the outbox to the board. */
import { type JetStreamClient, jetstream } from "@nats-io/jetstream";
import type { NatsConnection } from "@nats-io/nats-core";
import type { Outbox, Waiting } from "../log/outbox.ts";
import { type Joined, readJoined } from "./membership.ts";
import { type Message, MOST_BYTES, packed } from "./message.ts";
import { isShared, shownEvent } from "./shown.ts";
import { subjectFor } from "./subjects.ts";
import { isTooLarge } from "./trouble.ts";

/** So many are under way at once: a slow network has time for them, a long log is soon sent. */
const BATCH = 16;
const ACKNOWLEDGED_WITHIN_MS = 20_000;
/** Looks by itself now and then, should nobody have said that something waits. */
const LOOK_EVERY_MS = 30_000;

export interface SenderOptions {
  outbox: Outbox;
  joined: Joined;
  /** The phone's clock, milliseconds since the epoch. */
  now(): number;
  /** How many still wait, and how many of those no board would take for their size. */
  onCount(waiting: number, tooLarge: number): void;
  /** Another tab took the phone off this board. */
  onLeft(): void;
}

/** Sends the longest waiting first, and again until the board has said that it has them. */
export class Sender {
  readonly #options: SenderOptions;
  /** Too large for the board: they wait with no hope, and nothing waits for them. */
  readonly #tooLarge = new Set<number>();
  /** Something may wait that was not looked at yet. */
  #isNews = true;
  #wake = () => {};

  constructor(options: SenderOptions) {
    this.#options = options;
  }

  /** Something was put into the outbox. */
  look(): void {
    this.#isNews = true;
    this.#wake();
  }

  /** Sends through this connection until it fails. */
  async work(connection: NatsConnection, progress: () => void, stop: AbortSignal): Promise<void> {
    const board = jetstream(connection);
    await this.#introduce(board);
    progress();
    while (!stop.aborted) {
      this.#isNews = false;
      const batch = await this.#next();
      if (!(await this.#isStillJoined())) return this.#options.onLeft();
      if (stop.aborted) return;
      if (batch.length > 0) await this.#send(board, batch, progress);
      else if (!this.#isNews) await this.#woken(stop);
    }
  }

  /** Says who sits at the seat; once for each connection, in case the board was begun anew. */
  async #introduce(board: JetStreamClient): Promise<void> {
    const { joined, now } = this.#options;
    const { session, standing, since } = joined;
    await this.#publish(board, session, `${session}.${since}`, {
      ...{ is: "standing", sentAt: now(), session, standing },
    });
  }

  async #next(): Promise<Waiting[]> {
    const { outbox, onCount } = this.#options;
    const waiting = await outbox.waiting(BATCH + this.#tooLarge.size);
    onCount(await outbox.count(), this.#tooLarge.size);
    return waiting.filter(({ place }) => !this.#tooLarge.has(place)).slice(0, BATCH);
  }

  /** Looked at after what waits, so that nothing meant for one board goes to another. */
  async #isStillJoined(): Promise<boolean> {
    const { outbox, joined } = this.#options;
    const now = readJoined(await outbox.joined());
    return now?.since === joined.since && now.invitation.jwt === joined.invitation.jwt;
  }

  /** Those that the board has are done, whatever became of the others. */
  async #send(board: JetStreamClient, batch: readonly Waiting[], progress: () => void) {
    const outcomes = await Promise.allSettled(batch.map((one) => this.#sendOne(board, one)));
    const isDone = outcomes.map((outcome) => outcome.status === "fulfilled" && outcome.value);
    const done = batch.filter((_, n) => isDone[n]).map(({ place }) => place);
    await this.#options.outbox.done(done);
    if (done.length > 0) progress();
    for (const outcome of outcomes) if (outcome.status === "rejected") throw outcome.reason;
  }

  /** @returns whether it need not wait any longer */
  async #sendOne(board: JetStreamClient, { place, event }: Waiting): Promise<boolean> {
    const { joined, now } = this.#options;
    if (!event || !isShared(event.session, joined)) return true;
    const shown = shownEvent(event, joined.shares);
    try {
      const message: Message = { is: "event", sentAt: now(), event: shown };
      if (await this.#publish(board, shown.session, shown.id, message)) return true;
    } catch (cause) {
      if (!isTooLarge(cause)) throw cause;
    }
    this.#tooLarge.add(place);
    return false;
  }

  /** @returns false for what is too large to be tried */
  async #publish(board: JetStreamClient, session: string, id: string, message: Message) {
    const bytes = packed(message);
    if (bytes.length > MOST_BYTES) return false;
    const subject = subjectFor(this.#options.joined.invitation, session);
    // An id from elsewhere may hold a line's end, which a header can't.
    const msgID = encodeURIComponent(id);
    await board.publish(subject, bytes, { msgID, timeout: ACKNOWLEDGED_WITHIN_MS });
    return true;
  }

  #woken(stop: AbortSignal): Promise<void> {
    return new Promise((done) => {
      const wake = () => {
        clearTimeout(timer);
        stop.removeEventListener("abort", wake);
        done();
      };
      const timer = setTimeout(wake, LOOK_EVERY_MS);
      stop.addEventListener("abort", wake);
      this.#wake = wake;
    });
  }
}

/** All that goes on with a board while the app is open: sending, and reading while somebody looks. */
import type { Outbox } from "../log/outbox.ts";
import { connectTo } from "./connection.ts";
import { type KeepOptions, KeptConnection } from "./keep-connected.ts";
import type { Joined } from "./membership.ts";
import { NatsReader } from "./nats-reader.ts";
import type { BoardReason } from "./reasons.ts";
import { Sender } from "./sender.ts";
import { Showing } from "./showing.ts";
import { isForWatching } from "./subjects.ts";
import type { FromBoard } from "./talk.ts";

export interface OfficeOptions {
  outbox: Outbox;
  joined: Joined;
  tell(message: FromBoard): void;
  /** Opens a connection; tests have WebSockets of their own. */
  connect?: KeepOptions["connect"];
}

export class Office {
  readonly #options: OfficeOptions;
  readonly #connect: KeepOptions["connect"];
  readonly #sender: Sender;
  /** None for a seat that only watches. */
  readonly #sending: KeptConnection | undefined;
  #count = { waiting: 0, tooLarge: 0 };
  /** Why nothing goes, while nothing does. */
  #trouble: BoardReason | undefined;
  #isFollowing = false;
  /** Kept for whoever looks again: a day's board need not cross the network at every look. */
  #read: { reader: NatsReader; showing: Showing } | undefined;

  constructor(options: OfficeOptions) {
    const { outbox, joined, tell, connect = connectTo } = options;
    this.#options = options;
    this.#connect = connect;
    this.#sender = new Sender({
      ...{ outbox, joined, now: Date.now },
      onCount: (waiting, tooLarge) => {
        this.#count = { waiting, tooLarge };
        this.#trouble = undefined;
        tell({ is: "sending", ...this.#count });
      },
      onLeft: () => {
        this.close();
        tell({ is: "left" });
      },
    });
    if (isForWatching(joined.invitation.seat)) void this.#empty();
    else this.#sending = this.#send();
  }

  #send(): KeptConnection {
    const { invitation } = this.#options.joined;
    return new KeptConnection({
      ...{ invitation, connect: this.#connect },
      work: (...args) => this.#sender.work(...args),
      onTrouble: (trouble) => {
        this.#trouble = trouble;
        void this.#tellTrouble();
      },
    });
  }

  look(): void {
    this.#sender.look();
    if (!this.#sending) void this.#empty();
    if (this.#trouble) void this.#tellTrouble();
  }

  hurry(): void {
    this.#sending?.hurry();
    this.#read?.reader.hurry();
  }

  /** Reads the board on from where it was read last, and tells how it stands until `unfollow`. */
  follow(): void {
    if (this.#isFollowing) return;
    this.#isFollowing = true;
    this.#read ??= this.#reading();
    this.#options.tell({ is: "opening" });
    this.#read.reader.start(this.#read.showing.receive);
  }

  unfollow(): void {
    this.#isFollowing = false;
    this.#read?.reader.stop();
    this.#read?.showing.end();
  }

  close(): void {
    this.#sending?.stop();
    this.unfollow();
  }

  #reading() {
    const { joined, tell } = this.#options;
    const showing = new Showing(joined.invitation.seat, (patch) => tell({ is: "news", patch }));
    const reader = new NatsReader({
      ...{ invitation: joined.invitation, connect: this.#connect },
      onLive: () => showing.begin(),
      onAnew: () => {
        showing.forget();
        tell({ is: "opening" });
      },
      onTrouble: (trouble) => {
        showing.end();
        tell({ is: "unread", trouble });
      },
    });
    return { reader, showing };
  }

  /** What waits goes nowhere. Tried again when next something is logged. */
  async #empty(): Promise<void> {
    const { outbox } = this.#options;
    try {
      const waiting = await outbox.waiting(await outbox.count());
      await outbox.done(waiting.map(({ place }) => place));
    } catch {
      // The store says itself what is wrong with it.
    }
  }

  /** What was logged since the board was lost counts too. */
  async #tellTrouble(): Promise<void> {
    const { outbox, tell } = this.#options;
    const waiting = await outbox.count().catch(() => this.#count.waiting);
    const trouble = this.#trouble;
    if (trouble) tell({ is: "sending", ...this.#count, waiting, trouble });
  }
}

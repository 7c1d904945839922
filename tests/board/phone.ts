/** A phone with a log of its own in memory, that sends to a board as the app does. */

import { connectTo } from "../../src/board/connection.ts";
import type { Invitation } from "../../src/board/invitation.ts";
import { KeptConnection } from "../../src/board/keep-connected.ts";
import { type Joined, keptJoined, type Shares } from "../../src/board/membership.ts";
import type { BoardReason } from "../../src/board/reasons.ts";
import { Sender } from "../../src/board/sender.ts";
import { SteadyClock } from "../../src/log/clock.ts";
import type { EventBody, EventDraft, LogEvent } from "../../src/log/event.ts";
import { newId } from "../../src/log/identity.ts";
import { MemoryStore } from "../../src/log/memory-store.ts";
import { nodeSocket } from "../tools/board/node-socket.ts";

const KEPT_BACK: Shares = { notes: false, heard: false };

export class Phone {
  readonly #now: () => number;
  readonly store: MemoryStore;
  readonly session: string;
  readonly troubles: BoardReason[] = [];
  connects = 0;
  tooLarge = 0;
  hasLeft = false;
  #sender: Sender | undefined;
  #kept: KeptConnection | undefined;

  /**
   * @param aheadMs how far its clock is ahead of everybody else's
   * @param session which is open
   */
  constructor(aheadMs = 0, session = newId()) {
    this.session = session;
    this.#now = () => Date.now() + aheadMs;
    this.store = new MemoryStore(new SteadyClock(this.#now));
  }

  get outbox() {
    return this.store.outbox;
  }

  /** Logs, as the scribe does. */
  async log(body: EventBody, more: Partial<EventDraft> = {}): Promise<LogEvent> {
    const draft = { id: newId(), session: this.session, verdict: "log" as const, body, ...more };
    const [event] = await this.store.append([draft]);
    this.#sender?.look();
    if (!event) throw new Error("Nothing was stored.");
    return event;
  }

  async logFish(count: number): Promise<string[]> {
    const ids: string[] = [];
    for (let n = 1; n <= count; n++) {
      const { id } = await this.log({
        ...{ kind: "entry", statement: { kind: "fish", species: "roach", weightG: 10 * n } },
      });
      ids.push(id);
    }
    return ids;
  }

  async join(invitation: Invitation, shares = KEPT_BACK): Promise<Joined> {
    const standing = { name: `Angler ${invitation.seat}` };
    const joined = { invitation, standing, shares, since: this.#now(), session: this.session };
    await this.outbox.join(keptJoined(joined), this.session);
    return joined;
  }

  /** Sends from now on, like a page that is opened. */
  open(joined: Joined): void {
    const sender = new Sender({
      ...{ outbox: this.outbox, joined, now: this.#now },
      onCount: (_, tooLarge) => {
        this.tooLarge = tooLarge;
      },
      onLeft: () => {
        this.hasLeft = true;
      },
    });
    this.#sender = sender;
    this.#kept = new KeptConnection({
      invitation: joined.invitation,
      connect: (invitation) => {
        this.connects += 1;
        return connectTo(invitation, nodeSocket);
      },
      work: (...args) => sender.work(...args),
      onTrouble: (reason) => this.troubles.push(reason),
    });
  }

  /** As when the page goes. */
  close(): void {
    this.#kept?.stop();
    this.#kept = undefined;
    this.#sender = undefined;
  }

  hurry(): void {
    this.#kept?.hurry();
  }
}

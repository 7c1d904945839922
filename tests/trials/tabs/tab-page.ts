/** One tab of two that write into the same log, for the trial beside it to drive. */
import { SteadyClock } from "../../../src/log/clock.ts";
import type { EventDraft, LogEvent } from "../../../src/log/event.ts";
import { IdbStore } from "../../../src/log/idb-store.ts";
import { draft } from "../../log/store-contract.ts";
import { type Random, randomOf } from "../../simulation/random.ts";

/** What one tab has had confirmed, and what it was told had failed. */
export interface Written {
  /** By the drafts' ids, each time a draft was tried. */
  confirmed: { id: string; seq: number; device: string }[];
  /** The troubles' reasons. */
  failed: string[];
}

const STEPS = ["append", "append", "append", "again", "cut", "reopen", "wait", "import"] as const;

/** A connection is lost whenever the browser likes. */
function cutConnection(): void {
  const { transaction } = IDBDatabase.prototype;
  IDBDatabase.prototype.transaction = function (...args) {
    IDBDatabase.prototype.transaction = transaction;
    this.close();
    return transaction.apply(this, args);
  };
}

class Tab {
  readonly written: Written = { confirmed: [], failed: [] };
  readonly #database: string;
  readonly #random: Random;
  readonly #underWay: Promise<void>[] = [];
  #store: IdbStore;
  #tried: EventDraft[] = [];

  constructor(database: string, seed: number) {
    this.#database = database;
    this.#random = randomOf(seed);
    this.#store = this.#open();
  }

  async work(steps: number): Promise<Written> {
    for (let left = steps; left > 0; left -= 1) await this.#step();
    await Promise.all(this.#underWay);
    this.#store.close();
    return this.written;
  }

  async #step(): Promise<void> {
    const random = this.#random;
    switch (random.pick(STEPS)) {
      case "append":
        this.#tried = Array.from({ length: Math.ceil(random.between(0, 3)) }, () => draft());
        return this.#append(this.#tried);
      // As the app does when it does not know whether it was stored.
      case "again":
        return this.#append(this.#tried);
      case "cut":
        return cutConnection();
      case "reopen":
        await Promise.all(this.#underWay);
        this.#store.close();
        this.#store = this.#open();
        return;
      case "import": {
        const other = { ...draft(), v: 1, device: "elsewhere", seq: 1, at: 1 } as LogEvent;
        await this.#store.put([other]);
        return;
      }
      default:
        await new Promise((done) => setTimeout(done, random.between(0, 5)));
    }
  }

  /** Waits for it, or goes on at once, as when phrases come quickly. */
  async #append(drafts: readonly EventDraft[]): Promise<void> {
    const appending = this.#store.append(drafts).then(
      (events) => {
        const told = events.map(({ id, seq, device }) => ({ id, seq, device }));
        this.written.confirmed.push(...told);
      },
      (cause) => void this.written.failed.push(cause?.reason ?? String(cause)),
    );
    this.#underWay.push(appending);
    if (this.#random.happens(0.5)) await appending;
  }

  #open(): IdbStore {
    return new IdbStore(this.#database, new SteadyClock());
  }
}

const page = {
  work: (database: string, seed: number, steps: number) => new Tab(database, seed).work(steps),

  /** What is stored in the end of this phone's own. */
  async stored(database: string) {
    const store = new IdbStore(database, new SteadyClock());
    const events = await store.everything();
    store.close();
    return events
      .filter(({ device }) => device !== "elsewhere")
      .map(({ id, seq, device }) => ({ id, seq, device }));
  },
};

declare global {
  interface Window {
    tabPage: typeof page;
  }
}

window.tabPage = page;

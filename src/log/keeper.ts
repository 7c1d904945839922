import type { SteadyClock } from "./clock.ts";
import { newDevice, stampNext } from "./device.ts";
import type { EventDraft, LogEvent } from "./event.ts";
import { inTime } from "./patience.ts";
import type { LogStore } from "./store.ts";
import { type StoreTrouble, toTrouble } from "./trouble.ts";

export const FIRST_RETRY_MS = 1000;
export const LONGEST_RETRY_MS = 60_000;

export interface Kept {
  /**
   * Finished events: what the store will hold is exactly these, but for the number and the time of
   * what was just being written out when patience ended.
   */
  events: readonly LogEvent[];
  /** Only then may the entry be confirmed. */
  isStored: boolean;
}

export interface Keeping {
  /** Events that are only in memory, oldest first. */
  unsaved: readonly LogEvent[];
  /** Why, while it lasts. */
  trouble?: StoreTrouble;
}

type KeepingListener = (keeping: Keeping) => void;

/**
 * Loses nothing that was said. What the store does not take stays in memory, in order, and is tried
 * again after a growing wait and before the next entry.
 */
export class Keeper {
  readonly #store: LogStore;
  readonly #clock: SteadyClock;
  readonly #listeners = new Set<KeepingListener>();
  /**
   * Writes while the store, which has the device's numbers, cannot: an event has to be final at
   * once, so that it can be shown, corrected and exported as what it will be when stored.
   */
  #standIn = newDevice();
  #keeping: Keeping = { unsaved: [] };
  #retryMs = FIRST_RETRY_MS;
  #timer: ReturnType<typeof setTimeout> | undefined;
  /** What the store has been asked for in vain, and may still do. */
  readonly #overdue = new Set<Promise<unknown>>();
  /** What could not be read, to be read once that works. */
  readonly #unread = new Set<() => Promise<unknown>>();
  /** One thing at a time: what is said first is stored first. */
  #queue: Promise<unknown> = Promise.resolve();

  /** @param clock the one the store has */
  constructor(store: LogStore, clock: SteadyClock) {
    this.#store = store;
    this.#clock = clock;
  }

  get keeping(): Keeping {
    return this.#keeping;
  }

  /** Stores what one utterance said. Never fails: what could not be stored says so. */
  append(drafts: readonly EventDraft[]): Promise<Kept> {
    return this.#next(async () => {
      const events =
        // Who has just waited in vain is not made to wait again for each entry.
        this.#overdue.size === 0 &&
        (await this.#flush()) &&
        (await this.#attempt((signal) => this.#store.append(drafts, signal)));
      if (!events) return this.#hold(drafts);
      // Before it is answered, which has to know what else there is.
      await this.#readAgain();
      if (this.#unread.size === 0) this.#wellAgain();
      return { events, isStored: true };
    });
  }

  /** Tries at once to store what is only in memory; true if nothing is left there. */
  retry(): Promise<boolean> {
    return this.#next(async () => {
      const isStored = await this.#flush();
      if (isStored) await this.#readAgain();
      return isStored;
    });
  }

  /**
   * Resolves once what is stored is read, or cannot be, or takes too long: said at once, not only
   * when something is to be stored. What cannot be read is tried again like storing. Never fails.
   * @returns whether it is read
   */
  async read(reading: () => Promise<unknown>): Promise<boolean> {
    const work = reading();
    try {
      await inTime(() => work);
      this.#wasRead();
      return true;
    } catch (cause) {
      // What is only late may still come, and then nothing is wrong.
      if (this.#trouble(cause).reason === "slow")
        work.then(
          () => this.#wasRead(),
          () => this.#readLater(reading),
        );
      else this.#readLater(reading);
      return false;
    }
  }

  /** Tells of every change in what is unsaved, and why. Returns the way to stop it. */
  subscribe(listener: KeepingListener): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** Ends the retries; what is unsaved stays to be exported. */
  close(): void {
    clearTimeout(this.#timer);
    this.#listeners.clear();
  }

  #next<T>(task: () => Promise<T>): Promise<T> {
    const result = this.#queue.then(task);
    this.#queue = result.catch(() => {});
    return result;
  }

  async #readAgain(): Promise<void> {
    const readings = [...this.#unread];
    this.#unread.clear();
    for (const reading of readings) await this.read(reading);
  }

  #readLater(reading: () => Promise<unknown>): void {
    this.#unread.add(reading);
    this.#retryLater();
  }

  #wasRead(): void {
    if (this.#keeping.unsaved.length > 0 || this.#unread.size > 0) return;
    this.#retryMs = FIRST_RETRY_MS;
    this.#wellAgain();
  }

  #wellAgain(): void {
    if (this.#keeping.trouble) this.#tell({ unsaved: [] });
  }

  async #flush(): Promise<boolean> {
    const { unsaved } = this.#keeping;
    if (unsaved.length === 0) return true;
    if (!(await this.#attempt(() => this.#store.putOwn(unsaved)))) return false;
    clearTimeout(this.#timer);
    this.#overdue.clear();
    this.#retryMs = FIRST_RETRY_MS;
    this.#tell({ unsaved: [] });
    return true;
  }

  async #attempt<T>(storing: (signal: AbortSignal) => Promise<T>): Promise<T | undefined> {
    let work: Promise<T> | undefined;
    try {
      return await inTime((signal) => {
        work = storing(signal);
        return work;
      });
    } catch (cause) {
      if (this.#trouble(cause).reason === "slow" && work) this.#awaitLate(work);
      this.#retryLater();
      return undefined;
    }
  }

  /** The same drafts have the same ids, so that what was stored late is not stored again. */
  #awaitLate(work: Promise<unknown>): void {
    this.#overdue.add(work);
    const goOn = () => {
      this.#overdue.delete(work);
      void this.retry();
    };
    work.then(goOn, goOn);
  }

  #trouble(cause: unknown): StoreTrouble {
    const trouble = toTrouble(cause);
    this.#tell({ ...this.#keeping, trouble });
    return trouble;
  }

  #hold(drafts: readonly EventDraft[]): Kept {
    const events = drafts.map((draft) => {
      const { device, event } = stampNext(this.#standIn, draft, this.#clock);
      this.#standIn = device;
      return event;
    });
    // Events of one time are in order of device, so the device's own next one must come later.
    this.#clock.stamp(undefined, this.#standIn.lastAt + 1);
    this.#tell({ ...this.#keeping, unsaved: [...this.#keeping.unsaved, ...events] });
    return { events, isStored: false };
  }

  #retryLater(): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.retry(), this.#retryMs);
    this.#retryMs = Math.min(2 * this.#retryMs, LONGEST_RETRY_MS);
  }

  #tell(keeping: Keeping): void {
    this.#keeping = keeping;
    for (const listener of this.#listeners) listener(keeping);
  }
}

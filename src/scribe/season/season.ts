/** All sessions on this phone: their list, sums over them, taking one out, and starting like one. */
import { batch, type ReadonlySignal, signal } from "@preact/signals";
import type { Factor } from "../../analysis/effort/exposure.ts";
import type { Start } from "../../analysis/seasons/start.ts";
import { foldSession } from "../../log/fold.ts";
import type { Session, SetUp } from "../../log/session.ts";
import type { LogStore, RemovedSession } from "../../log/store.ts";
import type { Note } from "../notebook.ts";
import type { Clerk } from "./clerk.ts";
import type { Digest } from "./digest.ts";
import { type Progress, readDigests } from "./digest-keeper.ts";
import { type Query, type SeasonSums, timeOf } from "./query.ts";
import { notesLike } from "./start-like.ts";

export interface SeasonOptions {
  store: LogStore;
  clerk: Clerk;
  /** Opens a new session and writes into it. */
  begin(notes: readonly Note[]): Promise<void>;
}

/** A session taken out, and what is still known of it. */
export interface TakenOut {
  digest: Digest;
  bringBack(): Promise<void>;
}

/** While many digests are made, the list grows by so many at a time. */
const LISTED_EVERY = 20;

export class Season {
  /** The newest first; undefined until they are read. */
  readonly digests: ReadonlySignal<readonly Digest[] | undefined>;
  /** Digests that are being made; undefined when none are. */
  readonly progress: ReadonlySignal<Progress | undefined>;
  /** The last session taken out; it can come back until the page is closed. */
  readonly takenOut: ReadonlySignal<TakenOut | undefined>;
  readonly #digests = signal<readonly Digest[]>();
  readonly #progress = signal<Progress>();
  readonly #takenOut = signal<TakenOut>();
  readonly #options: SeasonOptions;

  constructor(options: SeasonOptions) {
    this.#options = options;
    this.digests = this.#digests;
    this.progress = this.#progress;
    this.takenOut = this.#takenOut;
    options.store.subscribeRemovals((id) => {
      this.#digests.value = this.#digests.peek()?.filter((digest) => digest.id !== id);
    });
  }

  /** Lists what is there at once, then what had to be made. Fails with a StoreTrouble. */
  async look(): Promise<void> {
    const { missing } = await this.#list();
    if (missing.length > 0) await this.complete();
  }

  /**
   * All digests, once those that are missing are made. Whoever asks while they are made waits for
   * the same ones. Fails with a StoreTrouble.
   */
  async complete(): Promise<readonly Digest[]> {
    try {
      await this.#options.clerk.ask({ what: "refresh" }, (progress) => this.#show(progress));
      return (await this.#list()).digests;
    } finally {
      this.#progress.value = undefined;
    }
  }

  sums(factor: Factor, query: Query): Promise<SeasonSums> {
    return this.#options.clerk.ask({ what: "sums", factor, query });
  }

  /** Where to start at a water, or anywhere. */
  start(water: string | undefined): Promise<Start> {
    return this.#options.clerk.ask({ what: "start", ...(water !== undefined && { water }) });
  }

  async session(id: string): Promise<Session> {
    return foldSession(id, await this.#options.store.session(id));
  }

  /** Takes a session out of the store, here and in other tabs. What was taken out before stays out. */
  async takeOut(digest: Digest): Promise<void> {
    const removed = await this.#options.store.remove(digest.id);
    this.#takenOut.value = { digest, bringBack: () => this.#bringBack(digest, removed) };
  }

  /** A new session with the plan and the set-up of another; `instead` replaces parts of the set-up. */
  startLike(digest: Digest, instead?: SetUp): Promise<void> {
    return this.#options.begin(notesLike(digest, instead));
  }

  #show(progress: Progress): void {
    this.#progress.value = progress;
    const isListed = this.#digests.peek() !== undefined;
    if (isListed && progress.done > 0 && progress.done % LISTED_EVERY === 0)
      void this.#list().catch(() => {});
  }

  async #list() {
    const { digests, missing } = await readDigests(this.#options.store);
    this.#digests.value = newestFirst(digests);
    return { digests, missing };
  }

  async #bringBack(digest: Digest, removed: RemovedSession): Promise<void> {
    await this.#options.store.bringBack(removed);
    batch(() => {
      this.#takenOut.value = undefined;
      this.#digests.value = newestFirst([...(this.#digests.peek() ?? []), digest]);
    });
  }
}

const newestFirst = (digests: readonly Digest[]): Digest[] =>
  digests.toSorted((one, other) => timeOf(other) - timeOf(one));

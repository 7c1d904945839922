import { openDB } from "idb";
import { type LogDatabase, type LogSchema, SCHEMA_VERSION, upgrade } from "./idb-schema.ts";
import { StoreTrouble, toTrouble } from "./trouble.ts";

interface Attempt {
  db: Promise<LogDatabase>;
  /** Fails if another tab keeps the database from being opened; never resolves. */
  blocked: Promise<never>;
}

/**
 * What a lost connection makes of work under way: names of DOMException. Safari says UnknownError
 * when its storage process has gone.
 */
const LOST = ["InvalidStateError", "AbortError", "UnknownError"];

/** A connection to the database that comes back after the browser has cut it. */
export class Connection {
  readonly #name: string;
  readonly #beforeOpen: () => Promise<void>;
  readonly #onOpen: (db: LogDatabase) => Promise<void>;
  #attempt: Attempt | undefined;
  #isClosed = false;

  /**
   * Neither of the two may fail.
   * @param beforeOpen is waited for before the database is opened and brought up to date
   * @param onOpen is waited for before anything is done on a connection
   */
  constructor(
    name: string,
    beforeOpen: () => Promise<void> = async () => {},
    onOpen: (db: LogDatabase) => Promise<void> = async () => {},
  ) {
    this.#name = name;
    this.#beforeOpen = beforeOpen;
    this.#onOpen = onOpen;
  }

  /**
   * Does some work on the database; if the connection turns out to be lost, once more on a new one.
   * So the work must do no harm done twice. Fails with a StoreTrouble.
   */
  async run<T>(work: (db: LogDatabase) => Promise<T>): Promise<T> {
    try {
      return await this.#try(work);
    } catch (cause) {
      if (!(cause instanceof Error) || !LOST.includes(cause.name)) throw toTrouble(cause);
    }
    try {
      return await this.#try(work);
    } catch (cause) {
      throw toTrouble(cause);
    }
  }

  close(): void {
    this.#isClosed = true;
    if (this.#attempt) this.#drop(this.#attempt);
  }

  async #try<T>(work: (db: LogDatabase) => Promise<T>): Promise<T> {
    if (this.#isClosed) throw new StoreTrouble("closed");
    this.#attempt ??= this.#open();
    const attempt = this.#attempt;
    const db = await Promise.race([attempt.db, attempt.blocked]);
    try {
      return await work(db);
    } catch (cause) {
      this.#drop(attempt);
      throw cause;
    }
  }

  /**
   * A blocked request to open stays in the browser's queue and later ones wait behind it without a
   * word, so it is kept and asked again rather than made anew.
   */
  #open(): Attempt {
    if (typeof indexedDB === "undefined") throw new StoreTrouble("refused");
    let refuse: (trouble: StoreTrouble) => void = () => {};
    const blocked = new Promise<never>((_, reject) => {
      refuse = reject;
    });
    const attempt: Attempt = {
      blocked,
      db: (async () => {
        await this.#beforeOpen();
        const db = await openDB<LogSchema>(this.#name, SCHEMA_VERSION, {
          upgrade: (db, from, _to, tx) => upgrade(db, from, tx),
          blocked: () => refuse(new StoreTrouble("blocked")),
          // Another tab wants a newer version: it must not wait for this one.
          blocking: () => this.#drop(attempt),
          terminated: () => this.#drop(attempt),
        });
        await this.#onOpen(db);
        return db;
      })(),
    };
    attempt.blocked.catch(() => {});
    attempt.db.catch(() => this.#drop(attempt));
    return attempt;
  }

  #drop(attempt: Attempt): void {
    if (this.#attempt === attempt) this.#attempt = undefined;
    attempt.db.then(
      (db) => db.close(),
      () => {},
    );
  }
}

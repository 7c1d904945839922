import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { Memo, MemoStore } from "./memos.ts";

interface MemoSchema extends DBSchema {
  memos: { key: string; value: Memo; indexes: { session: string } };
}

const VERSION = 1;

/**
 * Memos in a database of their own, so that sound can be cleared away, or fail, without the log.
 * A connection is opened for each piece of work: there is little of it, and none to lose.
 */
export class IdbMemos implements MemoStore {
  readonly #name: string;

  constructor(name = "pegscribe-memos") {
    this.#name = name;
  }

  put(memo: Memo): Promise<void> {
    return this.#with(async (db) => {
      await db.put("memos", memo);
    });
  }

  ids(session: string): Promise<string[]> {
    return this.#with((db) => db.getAllKeysFromIndex("memos", "session", session));
  }

  sound(id: string): Promise<Uint8Array | undefined> {
    return this.#with(async (db) => (await db.get("memos", id))?.sound);
  }

  remove(ids: readonly string[]): Promise<void> {
    return this.#with(async (db) => {
      const tx = db.transaction("memos", "readwrite");
      await Promise.all([...ids.map((id) => tx.store.delete(id)), tx.done]);
    });
  }

  async removeSession(session: string): Promise<void> {
    await this.remove(await this.ids(session));
  }

  async #with<T>(work: (db: IDBPDatabase<MemoSchema>) => Promise<T>): Promise<T> {
    const db = await openDB<MemoSchema>(this.#name, VERSION, {
      upgrade(opened) {
        opened.createObjectStore("memos", { keyPath: "id" }).createIndex("session", "session");
      },
    });
    try {
      return await work(db);
    } finally {
      db.close();
    }
  }
}

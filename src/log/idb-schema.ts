/** How the log lies in IndexedDB, and how it came to lie so. */
import type { DBSchema, IDBPDatabase, IDBPTransaction, StoreNames } from "idb";
import type { Device } from "./device.ts";
import type { LogEvent } from "./event.ts";
import { sessionIds } from "./idb-spans.ts";
import type { DamagedRecord, DigestRecord } from "./store.ts";

export const SCHEMA_VERSION = 4;

/** The one key of the `device` store. */
export const THIS_DEVICE = "this";

export interface LogSchema extends DBSchema {
  events: {
    key: string;
    value: LogEvent;
    indexes: { session: string; times: [string, number] };
  };
  device: { key: typeof THIS_DEVICE; value: Device };
  damaged: { key: number; value: DamagedRecord };
  /** One for each session that has events. */
  digests: { key: string; value: DigestRecord };
  /** Sessions that were taken out here. */
  removed: { key: string; value: { session: string } };
  /** Events that have to go to a shared board, by their place in the row. */
  outbox: { key: number; value: { event: string } };
  /** What the phone keeps of the board it is on; whoever joined knows how to read it. */
  joined: { key: string; value: unknown };
}

export type LogDatabase = IDBPDatabase<LogSchema>;

type Upgrade = IDBPTransaction<LogSchema, StoreNames<LogSchema>[], "versionchange">;

/** Brings a database of any earlier version up to this one; 0 is none at all. */
export async function upgrade(db: LogDatabase, from: number, tx: Upgrade): Promise<void> {
  if (from < 1) {
    const events = db.createObjectStore("events", { keyPath: "id" });
    events.createIndex("session", "session");
    db.createObjectStore("device");
    db.createObjectStore("damaged", { autoIncrement: true });
  }
  // Version 1 had to read every event of every session to tell when each took place.
  if (from < 2) tx.objectStore("events").createIndex("times", ["session", "at"]);
  // Version 2 had nothing by which to find a session but its events.
  if (from < 3) {
    db.createObjectStore("removed", { keyPath: "session" });
    const digests = db.createObjectStore("digests", { keyPath: "session" });
    const ids = from === 0 ? [] : await sessionIds(tx.objectStore("events").index("times"));
    await Promise.all(ids.map((session) => digests.put({ session })));
  }
  // Version 3 knew no shared board, at first.
  if (from < 4 && !db.objectStoreNames.contains("outbox")) {
    db.createObjectStore("outbox", { autoIncrement: true });
    db.createObjectStore("joined");
  }
}

/** How the log lies in IndexedDB, and how it came to lie so. */
import type { DBSchema, IDBPDatabase, IDBPTransaction, StoreNames } from "idb";
import type { Device } from "./device.ts";
import type { LogEvent } from "./event.ts";
import type { DamagedRecord } from "./store.ts";

export const SCHEMA_VERSION = 2;

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
}

export type LogDatabase = IDBPDatabase<LogSchema>;

type Upgrade = IDBPTransaction<LogSchema, StoreNames<LogSchema>[], "versionchange">;

/** Brings a database of any earlier version up to this one; 0 is none at all. */
export function upgrade(db: LogDatabase, from: number, tx: Upgrade): void {
  if (from < 1) {
    const events = db.createObjectStore("events", { keyPath: "id" });
    events.createIndex("session", "session");
    db.createObjectStore("device");
    db.createObjectStore("damaged", { autoIncrement: true });
  }
  // Version 1 had to read every event of every session to tell when each took place.
  if (from < 2) tx.objectStore("events").createIndex("times", ["session", "at"]);
}

/** Digests in IndexedDB: a record for each session, empty from each new event until it is made again. */
import type { IDBPObjectStore, StoreNames } from "idb";
import type { LogEvent } from "./event.ts";
import type { LogDatabase, LogSchema } from "./idb-schema.ts";
import { writeLoosely } from "./idb-write.ts";

type Digests = IDBPObjectStore<LogSchema, StoreNames<LogSchema>[], "digests", "readwrite">;

/** In the transaction that adds the events, so that no digest outlives what it was made from. */
export async function markStale(digests: Digests, events: readonly LogEvent[]): Promise<void> {
  for (const session of new Set(events.map((event) => event.session))) {
    await digests.put({ session });
  }
}

/** The events are counted in the same transaction: one may have come since they were read. */
export const keepDigest = (
  db: LogDatabase,
  session: string,
  events: number,
  digest: unknown,
): Promise<boolean> =>
  writeLoosely(db, ["events", "digests"], async (tx) => {
    const isWhole = (await tx.objectStore("events").index("session").count(session)) === events;
    if (isWhole) await tx.objectStore("digests").put({ session, digest });
    return isWhole;
  });

/** Sessions taken out of IndexedDB, and put back. */
import type { LogDatabase } from "./idb-schema.ts";
import { write } from "./idb-write.ts";
import type { DamagedRecord, RemovedSession } from "./store.ts";

const STORES = ["events", "damaged", "digests", "removed"] as const;

export const remove = (db: LogDatabase, session: string): Promise<RemovedSession> =>
  write(db, [...STORES], async (tx) => {
    const events = await tx.objectStore("events").index("session").getAll(session);
    for (const { id } of events) await tx.objectStore("events").delete(id);
    const damaged: DamagedRecord[] = [];
    let next = await tx.objectStore("damaged").openCursor();
    while (next) {
      if ((next.value.record as { session?: unknown } | undefined)?.session === session) {
        damaged.push(next.value);
        await next.delete();
      }
      next = await next.continue();
    }
    await tx.objectStore("digests").delete(session);
    await tx.objectStore("removed").put({ session });
    return { session, events, damaged };
  });

export const bringBack = (db: LogDatabase, removed: RemovedSession): Promise<void> =>
  write(db, [...STORES], async (tx) => {
    const { session, events, damaged } = removed;
    for (const event of events) await tx.objectStore("events").put(event);
    for (const one of damaged) await tx.objectStore("damaged").add(one);
    await tx.objectStore("removed").delete(session);
    await tx.objectStore("digests").put({ session });
  });

export const readmit = (db: LogDatabase, sessions: readonly string[]): Promise<void> =>
  write(db, ["removed"], async (tx) => {
    for (const session of sessions) await tx.objectStore("removed").delete(session);
  });

/** The database as version 1 of the log left it, made by hand so that no later code can change it. */
import type { LogEvent } from "../../src/log/event.ts";

const at = Date.UTC(2026, 4, 2, 10, 0, 0);

export const V1_DEVICE = { id: "device-of-version-1", seq: 3, lastAt: at + 120_000 };

export const V1_EVENTS: readonly LogEvent[] = (
  [
    { session: "saturday", at, seq: 1, body: { kind: "entry", statement: { kind: "drop" } } },
    {
      session: "saturday",
      at: at + 60_000,
      seq: 2,
      body: { kind: "entry", statement: { kind: "fish", species: "tench", weightG: 1360.77711 } },
    },
    {
      session: "sunday",
      at: at + 120_000,
      seq: 3,
      body: { kind: "amend", target: "v1-2", set: { species: "bream" } },
    },
  ] as const
).map((one) => ({ v: 1, id: `v1-${one.seq}`, device: V1_DEVICE.id, verdict: "log", ...one }));

/** Makes the database and leaves it closed. */
export async function makeV1(
  name: string,
  extra: readonly unknown[] = [],
  device: object = V1_DEVICE,
): Promise<void> {
  const opening = indexedDB.open(name, 1);
  opening.onupgradeneeded = () => {
    const events = opening.result.createObjectStore("events", { keyPath: "id" });
    events.createIndex("session", "session");
    opening.result.createObjectStore("device").put(device, "this");
    opening.result.createObjectStore("damaged", { autoIncrement: true });
    for (const event of [...V1_EVENTS, ...extra]) events.put(event);
  };
  const db = await finished(opening);
  db.close();
}

/** Opens a database as it is, past the store. */
export const openRaw = (name: string, version?: number): Promise<IDBDatabase> =>
  finished(indexedDB.open(name, version));

export function finished<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

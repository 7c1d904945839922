/** Looks at a log past the app, whatever version it is of. */
import type { Page } from "playwright-core";
import type { LogEvent } from "../../../src/log/event.ts";
import { SCHEMA_VERSION } from "../../../src/log/idb-schema.ts";
import { LOG_NAME } from "../../../src/log/log-name.ts";

export interface LogAsIs {
  version: number;
  events: readonly LogEvent[];
  /** How many of them have their place by time, and how many sessions are listed; only of late versions. */
  timed?: number;
  listed?: number;
}

/** From a page of the app's own place on the web. @returns undefined if there is none */
export async function logAsIs(page: Page): Promise<LogAsIs | undefined> {
  // As text: a driver takes seconds over so many objects.
  const read = await page.evaluate(async (name) => {
    const finished = <T>(request: IDBRequest<T>) =>
      new Promise<T>((done, failed) => {
        request.onsuccess = () => done(request.result);
        request.onerror = () => failed(request.error);
      });
    const opening = indexedDB.open(name);
    // It would be made anew.
    opening.onupgradeneeded = () => opening.transaction?.abort();
    const db = await finished(opening).catch(() => undefined);
    if (!db) return undefined;
    try {
      const tx = db.transaction([...db.objectStoreNames]);
      const stored = tx.objectStore("events");
      const events = await finished(stored.getAll());
      const { version } = db;
      if (version === 1) return JSON.stringify({ version, events });
      const timed = await finished(stored.index("times").count());
      const listed = await finished(tx.objectStore("digests").count());
      return JSON.stringify({ version, events, timed, listed });
    } finally {
      db.close();
    }
  }, LOG_NAME);
  return read === undefined ? undefined : (JSON.parse(read) as LogAsIs);
}

/**
 * @param right the events that were put into it
 * @returns what is wrong with it, each in a few words
 */
export function checkLog(log: LogAsIs, right: readonly LogEvent[]): string[] {
  const faults: string[] = [];
  const { version, events, timed, listed } = log;
  if (version !== 1 && version !== SCHEMA_VERSION) faults.push(`it is of version ${version}`);
  const written = new Map(right.map((event) => [event.id, sorted(event)]));
  if (events.length !== written.size) faults.push(`it has ${events.length} events`);
  const changed = events.filter((event) => written.get(event.id) !== sorted(event));
  if (changed.length > 0) faults.push(`${changed.length} events are not as they were`);
  if (version === 1) return faults;
  const sessions = new Set(right.map(({ session }) => session)).size;
  if (timed !== written.size) faults.push(`${timed} events have their place by time`);
  if (listed !== sessions) faults.push(`${listed} sessions are listed`);
  return faults;
}

const sorted = (event: LogEvent) => JSON.stringify(Object.entries(event).sort());

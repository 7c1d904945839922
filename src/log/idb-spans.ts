import type { IDBPIndex, StoreNames } from "idb";
import type { LogDatabase, LogSchema } from "./idb-schema.ts";
import type { SessionSpan } from "./store.ts";

/** The events by session and time, in whatever transaction. */
type Times = IDBPIndex<LogSchema, StoreNames<LogSchema>[], "events", "times", IDBTransactionMode>;

/** When each session took place, from the index alone: two hops a session, the newest first. */
export async function spans(db: LogDatabase): Promise<SessionSpan[]> {
  const found: SessionSpan[] = [];
  const times = db.transaction("events").store.index("times");
  let first = await times.openKeyCursor(namedByText());
  while (first) {
    const [id, firstAt] = first.key;
    const last = await times.openKeyCursor(numbersOf(id), "prev");
    if (last) found.push({ id, firstAt, lastAt: last.key[1] });
    // The next text after an id is the id with a zero at its end.
    first = await first.continue(key(`${id}\u0000`));
  }
  return found.sort((a, b) => b.firstAt - a.firstAt);
}

/** The sessions that have events, one hop each. */
export async function sessionIds(times: Times): Promise<string[]> {
  const ids: string[] = [];
  let next = await times.openKeyCursor(namedByText());
  while (next) {
    const [id] = next.key;
    ids.push(id);
    next = await next.continue(key(`${id}\u0000`));
  }
  return ids;
}

/** Keys of damaged records may hold anything; between all text and all bytes lies what is text. */
const namedByText = () => IDBKeyRange.bound([""], [new ArrayBuffer(0)], false, true);

/** A session's keys whose time is a number. */
const numbersOf = (id: string) => IDBKeyRange.bound([id], [id, Number.POSITIVE_INFINITY]);

/** A part of a key, which sorts before every whole one that begins with it. */
const key = (id: string) => [id] as unknown as [string, number];

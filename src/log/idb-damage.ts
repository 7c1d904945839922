import * as v from "valibot";
import { eventSchema, type LogEvent } from "./event.ts";
import type { LogDatabase } from "./idb-schema.ts";
import { write } from "./idb-write.ts";
import type { DamagedRecord } from "./store.ts";
import { sureCheck } from "./sure-check.ts";

/** A record under the key it has in the store of events, which need not be text. */
type Keyed = { id: IDBValidKey };

/** The records that are events; the others are moved out of the way and kept. */
export async function sound(db: LogDatabase, records: readonly unknown[]): Promise<LogEvent[]> {
  // Nearly all that was ever stored passes it, in a third of the time.
  const isSure = sureCheck(eventSchema);
  const events: LogEvent[] = [];
  const damaged: DamagedRecord[] = [];
  for (const record of records) {
    if (isSure(record)) {
      events.push(record as LogEvent);
      continue;
    }
    const read = v.safeParse(eventSchema, record, { abortEarly: true });
    if (read.success) events.push(read.output);
    else damaged.push({ record, fault: describe(read.issues[0]) });
  }
  if (damaged.length > 0) await setAside(db, damaged);
  return events;
}

/** What did not work out is tried again at the next reading, which must not fail because of it. */
async function setAside(db: LogDatabase, damaged: readonly DamagedRecord[]): Promise<void> {
  try {
    await write(db, ["events", "damaged"], async (tx) => {
      const events = tx.objectStore("events");
      for (const one of damaged) {
        const key = (one.record as Keyed).id as string;
        // Another tab may have been first.
        if ((await events.getKey(key)) === undefined) continue;
        await tx.objectStore("damaged").add(one);
        await events.delete(key);
      }
    });
  } catch {
    return;
  }
}

function describe(issue: v.BaseIssue<unknown>): string {
  const path = v.getDotPath(issue);
  return path === null ? issue.message : `${path}: ${issue.message}`;
}

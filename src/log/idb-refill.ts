/** An empty log is filled from its copy: the browser may have thrown a damaged one away. */
import type { LogCopy } from "./copy.ts";
import { type Device, tookOver } from "./device.ts";
import type { LogEvent } from "./event.ts";
import { markStale } from "./idb-digests.ts";
import { type LogDatabase, THIS_DEVICE } from "./idb-schema.ts";
import { write } from "./idb-write.ts";

/** Never fails: where it cannot be, the log is empty. */
export async function refill(db: LogDatabase, copy: LogCopy): Promise<void> {
  try {
    if (await db.transaction("events").store.openKeyCursor()) return;
    const { events, device } = await copy.read();
    if (events.length > 0) await put(db, events, device);
  } catch {
    return;
  }
}

const put = (db: LogDatabase, events: readonly LogEvent[], device: string | undefined) =>
  write(db, ["events", "device", "digests"], async (tx) => {
    for (const event of events) await tx.objectStore("events").put(event);
    if (device !== undefined)
      await tx.objectStore("device").put(deviceAfter(events, device), THIS_DEVICE);
    await markStale(tx.objectStore("digests"), events);
  });

/** The device as it was once it had written its events among these. */
function deviceAfter(events: readonly LogEvent[], id: string): Device {
  const own = events.filter(({ device }) => device === id).sort((a, b) => a.seq - b.seq);
  const { seq = 0 } = own.at(-1) ?? {};
  const lastAt = own.reduce((latest, { at }) => Math.max(latest, at), 0);
  return tookOver({ id, seq, lastAt }, own);
}

/** An empty log is filled from its copy: the browser may have thrown a damaged one away. */
import type { Copied, LogCopy } from "./copy.ts";
import { type Device, tookOver } from "./device.ts";
import type { LogEvent } from "./event.ts";
import { markStale } from "./idb-digests.ts";
import { type LogDatabase, THIS_DEVICE } from "./idb-schema.ts";
import { write } from "./idb-write.ts";
import { inTime } from "./patience.ts";

/**
 * Reading the copy of many years takes a phone some seconds (a guess). One that never answers must
 * not keep what is said from being stored.
 */
const READING_PATIENCE_MS = 10_000;

/** Never fails: where it cannot be, the log is empty, and filled later (`FileCopy.complete`). */
export async function refill(db: LogDatabase, copy: LogCopy): Promise<void> {
  try {
    if (await db.transaction("events").store.openKeyCursor()) return;
    const copied = await inTime(() => copy.read(), READING_PATIENCE_MS);
    if (copied.events.length > 0) await put(db, copied);
  } catch {
    return;
  }
}

const put = (db: LogDatabase, { events, device }: Copied) =>
  write(db, ["events", "device", "digests", "removed"], async (tx) => {
    const [stored, devices] = [tx.objectStore("events"), tx.objectStore("device")];
    const removed = new Set(await tx.objectStore("removed").getAllKeys());
    const kept = events.filter(({ session }) => !removed.has(session));
    for (const event of kept) await stored.put(event);
    // One that is there still knows its numbers better, also of another tab that was first.
    if (device !== undefined && (await devices.getKey(THIS_DEVICE)) === undefined)
      await devices.put(deviceAfter(events, device), THIS_DEVICE);
    await markStale(tx.objectStore("digests"), kept);
  });

/** The device as it was once it had written its events among these. */
function deviceAfter(events: readonly LogEvent[], id: string): Device {
  const own = events.filter(({ device }) => device === id).sort((a, b) => a.seq - b.seq);
  const { seq = 0 } = own.at(-1) ?? {};
  return tookOver({ id, seq, lastAt: 0 }, own);
}

/**
 * A log of an earlier version goes into the copy before it is brought up to date: a write so large is
 * easily cut off by a kill, and Chromium then throws the log away (once in forty kills, in trials).
 */
import { openDB } from "idb";
import type { LogCopy } from "./copy.ts";
import { type LogSchema, SCHEMA_VERSION, THIS_DEVICE } from "./idb-schema.ts";
import { lacking } from "./lacking.ts";
import { inTime } from "./patience.ts";

/** Longer than a phone takes for a season (a guess). The log must open all the same. */
const COPYING_PATIENCE_MS = 10_000;

/** Never fails: where it cannot be copied, it is not. */
export async function copyFirst(name: string, copy: LogCopy): Promise<void> {
  try {
    await inTime(() => copyEarlier(name, copy), COPYING_PATIENCE_MS);
  } catch {
    return;
  }
}

async function copyEarlier(name: string, copy: LogCopy): Promise<void> {
  const known = await indexedDB.databases();
  const { version = SCHEMA_VERSION } = known.find((database) => database.name === name) ?? {};
  if (version >= SCHEMA_VERSION) return;
  const { device, events } = await readEarlier(name, version);
  const copied = await copy.read();
  await copy.add(lacking(copied.events, events), device?.id);
}

/**
 * In one go, then closed: whoever brings the log up to date waits for it.
 * @throws if it is not there any more; an empty one of the earlier version could never be brought up
 */
async function readEarlier(name: string, version: number) {
  const db = await openDB<LogSchema>(name, version, {
    upgrade: (_db, _from, _to, tx) => tx.abort(),
  });
  try {
    const tx = db.transaction(["device", "events"]);
    const [device, events] = await Promise.all([
      tx.objectStore("device").get(THIS_DEVICE),
      tx.objectStore("events").getAll(),
      // Closed before that, it would stand in the way of the new version for a moment.
      tx.done,
    ]);
    return { device, events };
  } finally {
    db.close();
  }
}

/** Keeps the digests of a store up to date. */
import type { LogStore } from "../../log/store.ts";
import { type Digest, digestOf, readDigest } from "./digest.ts";

type DigestedStore = Pick<LogStore, "session" | "digests" | "keepDigest">;

/** How many of the digests that had to be made are made. */
export interface Progress {
  done: number;
  of: number;
}

/** The digests that can be read as they are, and the sessions whose must be made. */
export async function readDigests(
  store: Pick<LogStore, "digests">,
): Promise<{ digests: Digest[]; missing: string[] }> {
  const digests: Digest[] = [];
  const missing: string[] = [];
  for (const record of await store.digests()) {
    const digest = readDigest(record);
    if (digest) digests.push(digest);
    else missing.push(record.session);
  }
  return { digests, missing };
}

/**
 * Makes what is missing, keeps it, and gives all. One that has been written to meanwhile is still
 * given, and made again the next time; a session without a sound event has none.
 */
export async function allDigests(
  store: DigestedStore,
  onProgress: (progress: Progress) => void = () => {},
): Promise<Digest[]> {
  const { digests, missing } = await readDigests(store);
  for (const [done, session] of missing.entries()) {
    onProgress({ done, of: missing.length });
    const events = await store.session(session);
    if (events.length === 0) continue;
    const digest = digestOf(session, events);
    await store.keepDigest(session, events.length, digest);
    digests.push(digest);
  }
  return digests;
}

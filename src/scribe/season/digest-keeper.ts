/** Keeps the digests of a store up to date. */
import type { LogStore } from "../../log/store.ts";
import { type Digest, digestOf, readDigest } from "./digest.ts";

export type DigestedStore = Pick<LogStore, "session" | "digests" | "keepDigest">;

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
 * Makes one session's digest and keeps it, unless it has been written to meanwhile; undefined for a
 * session without a sound event.
 */
export async function makeDigest(store: DigestedStore, id: string): Promise<Digest | undefined> {
  const events = await store.session(id);
  if (events.length === 0) return undefined;
  const digest = digestOf(id, events);
  await store.keepDigest(id, events.length, digest);
  return digest;
}

/** While one waits for the store, the other works out what it was given. */
const HANDS = 2;

/**
 * Makes what is missing and gives all. One that has been written to meanwhile is given too, and made
 * again the next time.
 */
export async function allDigests(
  store: DigestedStore,
  onProgress: (progress: Progress) => void = () => {},
): Promise<Digest[]> {
  const { digests, missing } = await readDigests(store);
  const left = missing.values();
  let done = 0;
  const hand = async () => {
    for (const session of left) {
      const digest = await makeDigest(store, session);
      if (digest) digests.push(digest);
      done += 1;
      onProgress({ done, of: missing.length });
    }
  };
  if (missing.length > 0) onProgress({ done, of: missing.length });
  await Promise.all(Array.from({ length: HANDS }, hand));
  return digests;
}

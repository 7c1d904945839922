import { StoreTrouble } from "./trouble.ts";

/**
 * Milliseconds after which an angler wants to know that nothing was stored yet. A choice of our own:
 * a phone's disk takes some hundredths of a second (from memory).
 */
export const PATIENCE_MS = 5000;

/**
 * Waits so long and no longer. What was begun is asked to stop, and its failing later is nobody's
 * concern.
 * @throws StoreTrouble with the reason `slow`, or whatever the work fails with in time
 */
export async function inTime<T>(
  work: (signal: AbortSignal) => Promise<T>,
  patienceMs = PATIENCE_MS,
): Promise<T> {
  const stop = new AbortController();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => {
      reject(new StoreTrouble("slow"));
      stop.abort();
    }, patienceMs);
  });
  try {
    return await Promise.race([work(stop.signal), late]);
  } finally {
    clearTimeout(timer);
  }
}

import type { ReadonlySignal } from "@preact/signals";

interface GoingOverOptions {
  /** Another tab has taken a new version: what this page has still to fetch is gone. */
  isTaken: ReadonlySignal<boolean>;
  /** Something would be lost or broken off if the page were loaded again. */
  isBusy(): boolean;
  /** Waits for what is just being stored; whether nothing is left in memory. Must not fail. */
  stored(): Promise<boolean>;
}

/** @returns loads the page again, in the new version, unless there is none or something would be lost */
export function goingOver({ isTaken, isBusy, stored }: GoingOverOptions): () => Promise<void> {
  return async () => {
    if (!isTaken.value || isBusy()) return;
    if ((await stored()) && !isBusy()) location.reload();
  };
}

import type { Signal } from "@preact/signals";

/** What Review and the voice share. */
export interface PutRight {
  /** The entry that is on the screen, by its id: what "that" means to whoever speaks or types. */
  inQuestion: Signal<string | undefined>;
  /** Says it aloud, however little is said otherwise; the first time within a gesture. */
  readOut(words: string): void;
}

/** What the screens see of the angler's own voice. */
import type { ReadonlySignal } from "@preact/signals";

export interface VoiceCare {
  /** Entries and lines of the open session whose sound is kept, by their ids. */
  memos: ReadonlySignal<ReadonlySet<string>>;
  /** Plays one; the ears are held meanwhile. To be called within a gesture. */
  playMemo(id: string): Promise<void>;
}

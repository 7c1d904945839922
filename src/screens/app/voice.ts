/** What the screens see of the angler's own voice. */
import type { ReadonlySignal } from "@preact/signals";
import type { Drill } from "../../scribe/drill.ts";

export type { Drill, DrillState, Outcome } from "../../scribe/drill.ts";

export interface VoiceCare {
  /** Entries and lines of the open session whose sound is kept, by their ids. */
  memos: ReadonlySignal<ReadonlySet<string>>;
  /** Plays one; the ears are held meanwhile. To be called within a gesture. */
  playMemo(id: string): Promise<void>;
  /** Ends listening; a drill for one run. */
  drill(): Promise<Drill>;
}

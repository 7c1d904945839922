/** What the screens see of the phone that the app lives on. */
import type { ReadonlySignal } from "@preact/signals";
import type { HomeScreenState } from "../../scribe/home-screen.ts";
import type { StorageState } from "../../scribe/storage-care.ts";

export type { HomeScreenState, StorageState };

export interface Home {
  /** How safe the log is from being cleared away by the browser. */
  storage: ReadonlySignal<StorageState>;
  askToKeep(): Promise<void>;
  homeScreen: ReadonlySignal<HomeScreenState>;
  putOnHomeScreen(): Promise<void>;
  /** The first steps were neither taken nor passed over on this phone. */
  isNew: ReadonlySignal<boolean>;
  /** Opens a session that is not kept, to try phrases in. */
  practise(): void;
  /** Goes back to the angler's own session; the first steps don't come by themselves again. */
  stopPractising(): void;
  /** Says it aloud after a tone; to be called within a gesture. @returns false where there is no voice */
  tryVoice(words: string): Promise<boolean>;
}

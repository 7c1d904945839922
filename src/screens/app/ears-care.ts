/** What the screens see of the ears inside the app, and getting ready for no signal. */
import type { ReadonlySignal } from "@preact/signals";
import type { EarsKept } from "../../scribe/ears-care.ts";
import type { EarsThere } from "../../speech/ranking.ts";

export type { EarsKept };

export interface EarsCare {
  state: ReadonlySignal<EarsKept>;
  /** What the browser's own ears do with the sound. */
  web: ReadonlySignal<EarsThere["web"]>;
  /** Learns how much there is to fetch; without a network it stays unknown. */
  measure(): Promise<void>;
  /** Fetches and keeps what is missing; `state` tells how it goes. */
  getReady(): Promise<void>;
  remove(): Promise<void>;
}

/** Which ears may hear as things stand, and in what order they are tried. */

import type { RecogniserKind } from "./recogniser.ts";

/** `either` is whichever is better at the time. */
export type EarsChoice = RecogniserKind | "either";

export interface EarsThere {
  choice: EarsChoice;
  /** The browser has a recogniser; `sends` when it sends the sound over the network. */
  web: "none" | "sends" | "on-device";
  /** The ears inside the app: this browser cannot run them, or they are not fetched, or they are there. */
  offline: "impossible" | "absent" | "kept";
  /** False where there is surely no network. */
  online: boolean;
}

/**
 * The browser's ears know every word there is, so they come first where they can be reached; those
 * inside the app know the phrases only, but need nobody. Ears not fetched yet stand where no others
 * can: they say what is missing.
 */
export function rankEars({ choice, web, offline, online }: EarsThere): RecogniserKind[] {
  if (choice === "web" && web !== "none") return ["web"];
  if (choice === "offline" && offline !== "impossible") return ["offline"];
  if (web === "none") return offline === "impossible" ? [] : ["offline"];
  if (offline !== "kept") return ["web"];
  return online || web === "on-device" ? ["web", "offline"] : ["offline", "web"];
}

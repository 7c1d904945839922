/** What the page and the ear's worker say to each other. Sound goes straight to the worker, by a port. */
import type { Names } from "./places.ts";

export type ToWorker =
  | { is: "prepare"; base: string; own: Names }
  /** Sound follows on the port: pieces of samples at the suppressor's rate. */
  | { is: "listen"; sound: MessagePort }
  | { is: "finish" };

export type FromWorker =
  | { is: "ready" }
  | { is: "interim"; text: string }
  /** Milliseconds before now that the words began and ended. */
  | { is: "heard"; text: string; confidence: number; beganAgoMs: number; endedAgoMs: number }
  /** All that was said before "finish" has been delivered. */
  | { is: "finished" }
  | { is: "failed"; detail: string };

import type { Figures } from "../part.ts";
import { median } from "../times.ts";
import type { Start } from "./start.ts";

/** What comes out alike on any machine. */
export const figuresOf = (starts: readonly Start[]): Figures => ({
  "script until Live can be used, bytes": median(starts.map(({ scriptBytes }) => scriptBytes)),
  "all until Live can be used, bytes": median(starts.map(({ bytes }) => bytes)),
  "requests until Live can be used": median(starts.map(({ requests }) => requests)),
  "all in the end, bytes": median(starts.map(({ allBytes }) => allBytes)),
});

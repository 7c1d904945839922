import type { Session } from "../../log/session.ts";
import type { Units } from "./words.ts";

/** What a question is answered from. */
export interface Asking {
  session: Session;
  /** Milliseconds since the epoch. */
  now: number;
  units: Units;
}

/** An answer for an angler who wants it short, and for one who wants all of it. */
export interface Words {
  short: string;
  full: string;
}

export const same = (text: string): Words => ({ short: text, full: text });

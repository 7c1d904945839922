/** What is told of hearing, reading and keeping, for whoever shows it. */
import type { Statement } from "../../grammar/statement.ts";
import type { Verdict } from "../log/event.ts";

/** What the ears are doing. */
export interface Hearing {
  is: "off" | "starting" | "listening" | "held" | "waiting" | "refused" | "unavailable";
  kind?: "web" | "offline";
  /** What is wrong, and what to do about it; one sentence each. */
  trouble?: { what: string; todo: string };
  /** Sound leaves the phone for the recogniser's maker. */
  sendsSound: boolean;
}

/** What became of the last thing that was said or typed. */
export interface LastHeard {
  text: string;
  verdict: Verdict;
  /** The statements in English, one a line; empty when nothing was taken. */
  understood: readonly string[];
  /** The spoken answer, where there was one. */
  answer?: string;
  /** Stored with certainty; false while it waits in memory. */
  isStored: boolean;
  /** When it was spoken, milliseconds since the epoch. */
  at: number;
}

/** One way an uncertain line could be read. */
export interface PossibleReading {
  heard: string;
  said: string;
  statements: readonly Statement[];
}

export interface Keeping {
  unsaved: number;
  /** Why, and what to do, while something is unsaved. */
  trouble?: string;
  /** Records that were set aside because they could not be read. */
  damaged: number;
}

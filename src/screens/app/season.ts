import type { Season as AllSessions } from "../../scribe/season/season.ts";

/** All sessions on this phone; fetched when first asked for, and the same one from then on. */
export type Season = () => Promise<AllSessions>;

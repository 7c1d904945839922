/**
 * What a board shows, as plain data: it is worked out beside the screen and sent over. All times are
 * milliseconds since the epoch by the board's own clock, whatever the phones' clocks say.
 */
import type { BestVerdict } from "../../analysis/best.ts";
import type { Estimate } from "../../analysis/estimate.ts";
import type { RateNow } from "../../analysis/rates/rate-now.ts";
import type { SeasonContender } from "../../analysis/seasons/over-sessions.ts";
import type { SessionState, SetUp } from "../../log/session.ts";
import type { Standing } from "../membership.ts";

/** A place among others by weight; who weighs the same shares the mean of their places. */
export interface Rank {
  place: number;
  of: number;
  /** False where another's limits reach into this one's: the scales may turn them round. */
  settled: boolean;
}

/** One seat: the session it fishes now, or fished last. */
export interface BoardRow {
  seat: string;
  /** Undefined until the seat has said who sits there. */
  standing: Standing | undefined;
  /** Undefined where it has logged nothing yet. */
  state: SessionState | undefined;
  count: number;
  /** Grams in all, of an angler who is not known but by the nets he had weighed in this session. */
  bag: Estimate;
  setUp: SetUp;
  lastFishAt: number | undefined;
  /** Fish an hour, to a tenth below ten. */
  rate: RateNow;
  /** When the server last took anything from it. */
  heardAt: number;
  /** Nothing was heard from it for so long that its sums end with its last word. */
  isGone: boolean;
  /** Where a match is fished; within the section only where it names one. */
  ranks: { section: Rank | undefined; overall: Rank } | undefined;
}

/** The one order of rows that does not hang on what came first. */
export const bySeat = (one: BoardRow, other: BoardRow): number => (one.seat < other.seat ? -1 : 1);

export const POOLED_FACTORS = ["depth", "bait", "rig"] as const;
export type PooledFactor = (typeof POOLED_FACTORS)[number];

/** What all pegs together say of one factor. */
export interface Pooled {
  verdict: BestVerdict;
  /** The likeliest best first; only the first few. `sessions` counts pegs. */
  ranked: readonly SeasonContender[];
}

export interface BoardView {
  /** When it looked like this. */
  at: number;
  rows: readonly BoardRow[];
  pooled: Readonly<Record<PooledFactor, Pooled>>;
  /** Messages set aside because nothing could be made of them. */
  damaged: number;
}

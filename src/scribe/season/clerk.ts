/** Who works out the season: in a worker, so that the screen stays free, or where there is none, here. */
import type { Factor } from "../../analysis/effort/exposure.ts";
import type { Start } from "../../analysis/seasons/start.ts";
import { allDigests, type DigestedStore, type Progress } from "./digest-keeper.ts";
import { type Query, type SeasonSums, startOver, sumsOver } from "./query.ts";

export type Asked =
  | { what: "refresh" }
  | { what: "sums"; query: Query; factor: Factor }
  | { what: "start"; water?: string };

/** What each question is answered with. */
export interface Answers {
  refresh: true;
  sums: SeasonSums;
  start: Start;
}

export type OnProgress = (progress: Progress) => void;

export interface Clerk {
  /** Fails like the store does. */
  ask<A extends Asked>(asked: A, onProgress?: OnProgress): Promise<Answers[A["what"]]>;
}

/** Does the work where it is asked, one thing after the other: the first may make all digests. */
export function clerkOf(store: DigestedStore): Clerk {
  let last: Promise<unknown> = Promise.resolve();
  const answer = async (asked: Asked, onProgress?: OnProgress) => {
    const digests = await allDigests(store, onProgress);
    switch (asked.what) {
      case "refresh":
        return true;
      case "sums":
        return sumsOver(digests, asked.query, asked.factor);
      case "start":
        return startOver(digests, asked.water);
    }
  };
  const ask = (asked: Asked, onProgress?: OnProgress) => {
    const next = last.then(() => answer(asked, onProgress));
    last = next.catch(() => {});
    return next;
  };
  return { ask: ask as Clerk["ask"] };
}

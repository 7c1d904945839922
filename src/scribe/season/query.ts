/** Which sessions are meant, and what is asked of them together. */
import type { Factor } from "../../analysis/effort/exposure.ts";
import { bestOverPast, type SeasonBest } from "../../analysis/seasons/over-sessions.ts";
import { type Start, startAt } from "../../analysis/seasons/start.ts";
import type { Plan } from "../../log/event.ts";
import type { Digest } from "./digest.ts";

/** What is left out is not asked for. */
export interface Query {
  water?: string;
  /** 0 for January, whatever the year; by the clock of the phone. */
  month?: number;
  method?: NonNullable<Plan["method"]>;
}

/** When a session took place: its start, or else its first event. */
export const timeOf = ({ past, firstAt }: Digest): number => past?.startedAt ?? firstAt;

export const monthOf = (digest: Digest): number => new Date(timeOf(digest)).getMonth();

export const fits = (digest: Digest, { water, month, method }: Query): boolean =>
  (water === undefined || digest.plan.water === water) &&
  (month === undefined || monthOf(digest) === month) &&
  (method === undefined || digest.plan.method === method);

/** Sums over the sessions that fit. */
export interface SeasonSums {
  factor: Factor;
  /** Sessions that were fished, and their hours. */
  sessions: number;
  hours: number;
  best: SeasonBest;
}

const MS_PER_HOUR = 3_600_000;

export function sumsOver(digests: readonly Digest[], query: Query, factor: Factor): SeasonSums {
  const fished = digests.filter((digest) => digest.past && fits(digest, query));
  const past = fished.flatMap((digest) => digest.past ?? []);
  const fishedMs = fished.reduce((total, digest) => total + digest.fishedMs, 0);
  return {
    factor,
    sessions: fished.length,
    hours: fishedMs / MS_PER_HOUR,
    best: bestOverPast(factor, past),
  };
}

/** Where to start at a water, by all sessions. */
export const startOver = (digests: readonly Digest[], water: string | undefined): Start =>
  startAt(
    water,
    digests.flatMap((digest) => digest.past ?? []),
  );

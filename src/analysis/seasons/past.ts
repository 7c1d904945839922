/** What one session leaves to those after it: small, plain data, enough for every sum over sessions. */
import type { Session } from "../../log/session.ts";
import type { Trial } from "../best.ts";
import { exposuresBy, FACTORS, type Factor } from "../effort/exposure.ts";
import { type WeighedNet, weighedNets } from "../weights/bias.ts";

export interface PastSession {
  id: string;
  /** Milliseconds since the epoch. */
  startedAt: number;
  water?: string;
  /** Nets that were both spoken of and weighed. */
  nets: readonly WeighedNet[];
  /** Fish and hours at each level that the set-up named. */
  trials: Readonly<Record<Factor, readonly Trial[]>>;
}

/**
 * The past that a session makes; undefined for one that never started. It follows from the log
 * alone, so it can be made again at any time. `now` (milliseconds since the epoch) ends a session
 * that still lasts.
 */
export function pastOf(session: Session, now: number): PastSession | undefined {
  const { id, startedAt, plan } = session;
  if (startedAt === undefined) return undefined;
  const trials = FACTORS.map((factor) => [factor, trialsOf(factor, session, now)] as const);
  return {
    id,
    startedAt,
    ...(plan.water ? { water: plan.water } : {}),
    nets: weighedNets([session]),
    trials: Object.fromEntries(trials) as Record<Factor, Trial[]>,
  };
}

const trialsOf = (factor: Factor, session: Session, now: number): Trial[] =>
  exposuresBy(factor, session, now).flatMap(({ level, fish, hours }) =>
    level === undefined ? [] : [{ level, fish, hours }],
  );

/** What the list of sessions and the sums over them need of one session, made from its events alone. */
import { fishedStretches, lengthOf } from "../../analysis/effort/stretches.ts";
import { type PastSession, pastOf } from "../../analysis/seasons/past.ts";
import type { LogEvent, Plan } from "../../log/event.ts";
import { foldSession } from "../../log/fold.ts";
import type { Session, SetUp } from "../../log/session.ts";
import type { DigestRecord } from "../../log/store.ts";

/** Raised whenever a digest of old would be wrong or lacks something: all are then made anew. */
export const DIGEST_VERSION = 1;

export interface Digest {
  v: typeof DIGEST_VERSION;
  id: string;
  /** The first and the last event, milliseconds since the epoch. */
  firstAt: number;
  lastAt: number;
  state: Session["state"];
  plan: Plan;
  /** In force at the end. */
  setUp: SetUp;
  /** Milliseconds, pauses out. */
  fishedMs: number;
  count: number;
  spokenG: number;
  unweighed: number;
  lost: number;
  /** Entries that still wait for a look. */
  toCheck: number;
  /** Absent where it never started. */
  past?: PastSession;
}

/** A session that was never ended is taken to have lasted until its last event. */
export function digestOf(id: string, events: readonly LogEvent[]): Digest {
  const session = foldSession(id, events);
  const times = events.map(({ at }) => at);
  const lastAt = times.reduce((one, other) => Math.max(one, other), times[0] ?? 0);
  const past = pastOf(session, lastAt);
  return {
    v: DIGEST_VERSION,
    id,
    firstAt: times.reduce((one, other) => Math.min(one, other), lastAt),
    lastAt,
    state: session.state,
    plan: session.plan,
    setUp: session.setUp,
    fishedMs: lengthOf(fishedStretches(session, lastAt)),
    count: session.count,
    spokenG: session.spokenG,
    unweighed: session.unweighed,
    lost: session.entries.filter(({ statement }) => statement.kind === "loss").length,
    toCheck: session.entries.filter(({ verdict }) => verdict === "check").length,
    ...(past && { past }),
  };
}

/** The digest in a record; undefined where there is none of this version, so that it must be made. */
export function readDigest({ digest }: DigestRecord): Digest | undefined {
  const isOurs =
    typeof digest === "object" && digest !== null && "v" in digest && digest.v === DIGEST_VERSION;
  return isOurs ? (digest as Digest) : undefined;
}

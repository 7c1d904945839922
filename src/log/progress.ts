/** When the session began, paused and ended. */
import type { StatementOf } from "../../grammar/statement.ts";
import type { EntryStatement } from "./event.ts";
import type { SessionState, Span } from "./session.ts";

export interface Progress {
  state: SessionState;
  startedAt?: number;
  endedAt?: number;
  /** Only the last can be open. Kept up in place: a copy would make each pause dearer than the last. */
  pauses: Span[];
}

export const notStarted = (): Progress => ({ state: "ready", pauses: [] });

/** Kinds that only happen while fishing. */
const FISHING: readonly string[] = ["fish", "loss", "sign", "drop", "feed"];

/** Kinds that need a rig in the water; feed is thrown in during a break too. */
const RIG_OUT: readonly string[] = ["fish", "loss", "sign", "drop"];

/**
 * The session's progress after an entry; the one before is not to be used again.
 * Fishing starts a session that nobody started and ends a break that nobody ended, since hands are
 * full and words get forgotten; after the end it is taken for late writing and restarts nothing.
 * @param at milliseconds since the epoch, in the order of the session
 */
export function advance(progress: Progress, statement: EntryStatement, at: number): Progress {
  if (statement.kind === "session") return act(progress, statement.act, at);
  if (progress.state === "ready" && FISHING.includes(statement.kind)) return fish(progress, at);
  if (progress.state === "paused" && RIG_OUT.includes(statement.kind)) return fish(progress, at);
  return progress;
}

function act(progress: Progress, what: StatementOf<"session">["act"], at: number): Progress {
  if (what === "start" || what === "resume") return fish(progress, at);
  if (what === "stop") return progress.state === "ended" ? progress : stop(progress, at);
  if (progress.state !== "fishing") return progress;
  progress.pauses.push({ from: at });
  return { ...progress, state: "paused" };
}

/** Starts, or takes up again; the time between an end and a new start was a break. */
function fish(progress: Progress, at: number): Progress {
  const { endedAt, ...rest } = progress;
  if (endedAt !== undefined) progress.pauses.push({ from: endedAt });
  close(progress.pauses, at);
  return { ...rest, state: "fishing", startedAt: progress.startedAt ?? at };
}

function stop(progress: Progress, at: number): Progress {
  close(progress.pauses, at);
  return { ...progress, state: "ended", endedAt: at };
}

function close(pauses: Span[], at: number): void {
  const last = pauses.at(-1);
  if (last && last.to === undefined) pauses[pauses.length - 1] = { ...last, to: at };
}

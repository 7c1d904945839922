/** What of a log may be seen on the board: what the angler allowed, of the sessions fished there. */
import type { EventBody, LogEvent } from "../log/event.ts";
import { beganAt } from "../log/identity.ts";
import type { Joined, Shares } from "./membership.ts";

/** Stands where a note was made that the board may not read. */
const WITHHELD = "…";

/**
 * The session that was open on joining, and those begun since. A slip put right in last week's
 * session is nobody's business here.
 */
export const isShared = (session: string, { session: first, since }: Joined): boolean =>
  session === first || (beganAt(session) ?? 0) >= since;

/**
 * The event as the board may see it. Of what was heard and of notes it learns that they were there,
 * since later corrections may make fish of them, but not a word.
 */
export function shownEvent(event: LogEvent, shares: Shares): LogEvent {
  const { heard, body, ...rest } = event;
  const shown = shares.notes ? body : withoutNotes(body);
  return { ...rest, ...(shares.heard && heard && { heard }), body: withoutPlace(shown) };
}

function withoutNotes(body: EventBody): EventBody {
  switch (body.kind) {
    case "entry":
    case "replace":
      return { ...body, statement: withoutWords(body.statement) };
    case "plan": {
      const { notes: _, ...plan } = body.plan;
      return { ...body, plan };
    }
    default:
      return body;
  }
}

type Entered = Extract<EventBody, { kind: "entry" }>["statement"];

function withoutWords(statement: Entered): Entered {
  if (statement.kind === "note") return { ...statement, text: WITHHELD };
  if (statement.kind !== "remind") return statement;
  const { about: _, ...rest } = statement;
  return rest;
}

/** Where the angler sits is told by the standing, in the angler's own choice of words. */
function withoutPlace(body: EventBody): EventBody {
  if (body.kind !== "plan") return body;
  const { water: _water, peg: _peg, ...plan } = body.plan;
  return { ...body, plan };
}

/** What a session would be with more written into it. */
import { EVENT_VERSION, type EventDraft, type LogEvent } from "./event.ts";
import { foldSession } from "./fold.ts";
import type { Session } from "./session.ts";

/**
 * The session as if the drafts were its newest events: its entries, and what follows from them.
 * What is not of entries (plans, what the scales said, lines that were not taken) is left out.
 * @param drafts in the order of writing; when they were spoken does not matter here
 */
export function preview(session: Session, drafts: readonly Omit<EventDraft, "session">[]): Session {
  const entries = [...session.entries, ...session.withdrawn];
  const known = entries.flatMap(({ history }) => history);
  const at = [...entries, ...known].reduce((latest, one) => Math.max(latest, one.at), 0);
  const drafted = drafts.map(
    (draft, n): LogEvent => ({
      ...draft,
      v: EVENT_VERSION,
      session: session.id,
      device: LAST,
      seq: n + 1,
      at,
    }),
  );
  return foldSession(session.id, [...known, ...drafted]);
}

/** Sorts after every device's id. */
const LAST = "\uffff";

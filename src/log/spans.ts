import type { LogEvent } from "./event.ts";
import type { SessionSpan } from "./store.ts";

/** The sessions' spans, the newest first, once these events are added; the same where none is. */
export function spansAfter(
  spans: readonly SessionSpan[],
  events: readonly Pick<LogEvent, "session" | "at">[],
): readonly SessionSpan[] {
  if (events.length === 0) return spans;
  const byId = new Map(spans.map((span) => [span.id, span]));
  for (const { session, at } of events) {
    const { firstAt, lastAt } = byId.get(session) ?? { firstAt: at, lastAt: at };
    byId.set(session, {
      id: session,
      firstAt: Math.min(firstAt, at),
      lastAt: Math.max(lastAt, at),
    });
  }
  return [...byId.values()].sort((one, other) => other.firstAt - one.firstAt);
}

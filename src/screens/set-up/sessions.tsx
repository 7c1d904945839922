import type { SessionSpan } from "../../log/store.ts";
import { formatClock, formatDay } from "../../ui/format.ts";
import { passOnWords } from "../../words/pass-on.ts";
import type { App } from "../app.ts";

/** Earlier sessions, a new one, and logs from elsewhere. */
export function Sessions({ app }: { app: App }) {
  const sessions = app.sessions.value;
  const current = app.session.value.id;
  return (
    <section class="ticket">
      <h2>Sessions</h2>
      <button type="button" class="button button-main" onClick={() => app.newSession()}>
        New session
      </button>
      {sessions.length > 0 && (
        <ul class="stack">
          {sessions.map((span) => (
            <li key={span.id}>
              <button
                type="button"
                class="button button-wide"
                aria-current={span.id === current ? "true" : undefined}
                onClick={() => app.openSession(span.id)}
              >
                {spanWords(span)}
                {span.id === current && " (open now)"}
              </button>
            </li>
          ))}
        </ul>
      )}
      <a class="button" href="#files">
        {passOnWords.files}
      </a>
    </section>
  );
}

const spanWords = ({ firstAt, lastAt }: SessionSpan): string =>
  `${formatDay(firstAt)}, ${formatClock(firstAt)} to ${formatClock(lastAt)}`;

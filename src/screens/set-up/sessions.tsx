import { useSignal } from "@preact/signals";
import type { SessionSpan } from "../../log/store.ts";
import { counted, formatClock, formatDay } from "../../ui/format.ts";
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
      <Import app={app} />
    </section>
  );
}

const spanWords = ({ firstAt, lastAt }: SessionSpan): string =>
  `${formatDay(firstAt)}, ${formatClock(firstAt)} to ${formatClock(lastAt)}`;

function Import({ app }: { app: App }) {
  const outcome = useSignal("");
  const take = async (input: HTMLInputElement) => {
    const file = input.files?.[0];
    if (!file) return;
    outcome.value = "Reading the file…";
    outcome.value = await importFile(app, file);
    input.value = "";
  };
  return (
    <div class="field">
      <label for="import">Take in a log file</label>
      <input
        id="import"
        class="input"
        type="file"
        accept=".json,.txt,application/json,text/plain"
        aria-describedby="import-outcome"
        onChange={(event) => take(event.currentTarget)}
      />
      <p id="import-outcome" role="status">
        {outcome.value ||
          "A log exported here or on another phone. What is known already stays as it is."}
      </p>
    </div>
  );
}

/** What came of it, in a sentence. */
async function importFile(app: App, file: Blob): Promise<string> {
  try {
    const { added } = await app.importLog(await file.text());
    return added === 0 ? "All of it was here already." : `${counted(added, "record")} taken in.`;
  } catch (error) {
    return error instanceof Error ? error.message : "The file could not be read.";
  }
}

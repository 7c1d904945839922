import { useState } from "preact/hooks";
import type { Entry } from "../../log/session.ts";
import { formatClock } from "../../ui/format.ts";
import type { App } from "../app.ts";
import { Editor } from "./editor.tsx";
import { HeardWords, OtherReadings } from "./readings.tsx";
import { sayShown } from "./words.ts";

/** What was marked for a look, each with all that can be done about it. */
export function ToCheck({ app }: { app: App }) {
  const marked = app.session.value.entries.filter(({ verdict }) => verdict === "check");
  return (
    <section class="stack" aria-labelledby="to-check">
      <h2 id="to-check">To look at{marked.length > 0 && ` (${marked.length})`}</h2>
      {marked.length === 0 ? (
        <p>Nothing is in doubt.</p>
      ) : (
        <ul class="cards">
          {marked.map((entry) => (
            <li key={entry.id}>
              <Doubtful app={app} entry={entry} />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function Doubtful({ app, entry }: { app: App; entry: Entry }) {
  const [isOpen, setOpen] = useState(false);
  const said = sayShown(entry.statement, app.settings.value);
  return (
    <article class="ticket doubtful">
      <h3 class="doubtful-said">
        {formatClock(entry.at)} {said}
      </h3>
      <HeardWords heard={entry.heard} />
      <div class="row">
        <button type="button" class="button button-main" onClick={() => app.settle(entry)}>
          Right as it is
        </button>
        <button
          type="button"
          class="button"
          aria-expanded={isOpen}
          onClick={() => setOpen(!isOpen)}
        >
          Correct it
        </button>
        <button type="button" class="button button-take-out" onClick={() => app.withdraw(entry)}>
          Take out
        </button>
      </div>
      <OtherReadings app={app} entry={entry} />
      {isOpen && (
        <Editor
          app={app}
          statement={entry.statement}
          at={entry.at}
          save="Save"
          onSave={(statement, at) => app.correct(entry, statement, at)}
        />
      )}
    </article>
  );
}

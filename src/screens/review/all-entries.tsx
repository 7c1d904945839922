import { useRef, useState } from "preact/hooks";
import type { Entry } from "../../log/session.ts";
import { formatClock } from "../../ui/format.ts";
import type { App } from "../app.ts";
import { Editor } from "./editor.tsx";
import { HeardWords, OtherReadings } from "./readings.tsx";
import { sayShown } from "./words.ts";

/** Every entry that counts, the newest first; each opens to be corrected. */
export function AllEntries({ app }: { app: App }) {
  const { entries } = app.session.value;
  return (
    <section class="stack" aria-labelledby="all-entries">
      <h2 id="all-entries">All entries ({entries.length})</h2>
      {entries.length === 0 ? (
        <p>Nothing has been logged yet.</p>
      ) : (
        <ol class="entries">
          {[...entries].reverse().map((entry) => (
            <li key={entry.id}>
              <EntryRow app={app} entry={entry} />
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}

function EntryRow({ app, entry }: { app: App; entry: Entry }) {
  const [isOpen, setOpen] = useState(false);
  const opener = useRef<HTMLButtonElement>(null);
  const close = () => {
    setOpen(false);
    opener.current?.focus();
  };
  return (
    <>
      <button
        type="button"
        class="entry"
        ref={opener}
        aria-expanded={isOpen}
        onClick={() => setOpen(!isOpen)}
      >
        <span class="entry-time">{formatClock(entry.at)}</span>
        <span class="entry-said">{sayShown(entry.statement, app.settings.value)}</span>
        {entry.fishNumber !== undefined && (
          <span class="entry-number">
            <span class="for-ears">fish </span>
            {numbersOf(entry)}
          </span>
        )}
      </button>
      {isOpen && <Opened app={app} entry={entry} close={close} />}
    </>
  );
}

function Opened({ app, entry, close }: { app: App; entry: Entry; close: () => void }) {
  return (
    <div class="ticket opened">
      <HeardWords heard={entry.heard} />
      <OtherReadings app={app} entry={entry} />
      <Editor
        app={app}
        statement={entry.statement}
        at={entry.at}
        save="Save"
        onSave={(statement, at) => {
          void app.correct(entry, statement, at);
          close();
        }}
      />
      <div class="row">
        <button type="button" class="button" onClick={close}>
          Leave it
        </button>
        <button type="button" class="button button-take-out" onClick={() => app.withdraw(entry)}>
          Take out
        </button>
      </div>
    </div>
  );
}

/** "7", or "7 to 9" for an entry of three fish. */
function numbersOf({ fishNumber = 1, statement }: Entry): string {
  const count = statement.kind === "fish" ? (statement.count ?? 1) : 1;
  return count === 1 ? String(fishNumber) : `${fishNumber} to ${fishNumber + count - 1}`;
}

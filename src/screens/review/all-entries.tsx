import { useRef } from "preact/hooks";
import { numbersOf } from "../../log/alterations.ts";
import type { Entry } from "../../log/session.ts";
import { formatClock } from "../../ui/format.ts";
import { ROWS, useGrowing } from "../../ui/use-growing.ts";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";
import { Opened } from "./opened.tsx";
import { sayShown } from "./words.ts";

const { entries: words } = reviewWords;

interface AllEntriesProps {
  app: App;
  /** The id of the one that is open. */
  open: string | undefined;
  onOpen: (id: string | undefined) => void;
}

/** Every entry that counts, the newest first; each opens to be corrected, one at a time. */
export function AllEntries({ app, open, onOpen }: AllEntriesProps) {
  const { entries } = app.session.value;
  const shown = useGrowing(entries.length, ROWS);
  return (
    <section class="stack" aria-labelledby="all-entries">
      <h2 id="all-entries">{words.title(entries.length)}</h2>
      {entries.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <ol class="entries">
          {entries
            .slice(-shown)
            .reverse()
            .map((entry) => (
              <li key={entry.id}>
                <EntryRow
                  app={app}
                  entry={entry}
                  isOpen={entry.id === open}
                  onOpen={(isOpen) => onOpen(isOpen ? entry.id : undefined)}
                />
              </li>
            ))}
        </ol>
      )}
    </section>
  );
}

interface EntryRowProps {
  app: App;
  entry: Entry;
  isOpen: boolean;
  onOpen: (isOpen: boolean) => void;
}

function EntryRow({ app, entry, isOpen, onOpen }: EntryRowProps) {
  const opener = useRef<HTMLButtonElement>(null);
  const close = () => {
    onOpen(false);
    opener.current?.focus();
  };
  const numbers = numbersOf(entry);
  const [first, last] = [numbers[0], numbers.at(-1)];
  return (
    <>
      <button
        type="button"
        class="entry"
        ref={opener}
        aria-expanded={isOpen}
        onClick={() => onOpen(!isOpen)}
      >
        <span class="entry-time">{formatClock(entry.at)}</span>
        <span class="entry-said">{sayShown(entry.statement, app.settings.value)}</span>
        {first !== undefined && last !== undefined && (
          <span class="entry-number">
            <span class="for-ears">{words.fish}</span>
            {words.numbers(first, last)}
          </span>
        )}
      </button>
      {isOpen && <Opened app={app} entry={entry} close={close} />}
    </>
  );
}

import { useState } from "preact/hooks";
import { sayName } from "../../../grammar/saying/fish.ts";
import type { EntryStatement } from "../../log/event.ts";
import type { Session } from "../../log/session.ts";
import type { Note } from "../../scribe/notebook.ts";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";
import { Editor } from "./editor.tsx";
import { NEW_ENTRIES } from "./fields.ts";
import { namesUsed } from "./name-field.tsx";

interface NewEntryProps {
  app: App;
  /** Milliseconds since the epoch: when it happened, as far as is known. */
  at: number;
  /** What adding it would write. */
  notes: (statement: EntryStatement, at: number) => Note[];
  onSave: (statement: EntryStatement, at: number) => void;
}

/** What kind of thing it was, the fish of the day first, and then its fields. */
export function NewEntry({ app, at, notes, onSave }: NewEntryProps) {
  const [kind, setKind] = useState<string>();
  const starts = [...fishOfTheDay(app.session.value), ...NEW_ENTRIES];
  const chosen = starts.find(({ name }) => name === kind);
  return (
    <div class="stack">
      <div class="row">
        {starts.map(({ name }) => (
          <button
            key={name}
            type="button"
            class="button"
            aria-expanded={name === kind}
            onClick={() => setKind(name === kind ? undefined : name)}
          >
            {name}
          </button>
        ))}
      </div>
      {chosen && (
        <Editor
          key={chosen.name}
          app={app}
          statement={chosen.statement}
          at={at}
          save={reviewWords.add.save(chosen.name)}
          notes={notes}
          onSave={(statement, when) => {
            setKind(undefined);
            onSave(statement, when);
          }}
        />
      )}
    </div>
  );
}

/** More make the way to the other kinds long. */
const MOST_SPECIES = 3;

function fishOfTheDay(session: Session): { name: string; statement: EntryStatement }[] {
  return namesUsed("species", session)
    .slice(0, MOST_SPECIES)
    .map((species) => {
      const name = sayName(species);
      const statement = { kind: "fish", species } as const;
      return { name: name.charAt(0).toUpperCase() + name.slice(1), statement };
    });
}

import { useState } from "preact/hooks";
import type { EntryStatement } from "../../log/event.ts";
import type { App } from "../app.ts";
import { Editor } from "./editor.tsx";
import { NEW_ENTRIES } from "./fields.ts";

interface NewEntryProps {
  app: App;
  /** Milliseconds since the epoch: when it happened, as far as is known. */
  at: number;
  onSave: (statement: EntryStatement, at: number) => void;
}

/** What kind of thing it was, and then its fields. */
export function NewEntry({ app, at, onSave }: NewEntryProps) {
  const [kind, setKind] = useState<string>();
  const chosen = NEW_ENTRIES.find(({ name }) => name === kind);
  return (
    <div class="stack">
      <div class="row">
        {NEW_ENTRIES.map(({ name }) => (
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
          save={`Add: ${chosen.name.toLowerCase()}`}
          onSave={(statement, when) => {
            setKind(undefined);
            onSave(statement, when);
          }}
        />
      )}
    </div>
  );
}

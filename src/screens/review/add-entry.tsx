import { useState } from "preact/hooks";
import type { App } from "../app.ts";
import { Editor } from "./editor.tsx";
import { NEW_ENTRIES } from "./fields.ts";

/** An entry that was never said. */
export function AddEntry({ app }: { app: App }) {
  const [kind, setKind] = useState<string>();
  const chosen = NEW_ENTRIES.find(({ name }) => name === kind);
  return (
    <section class="stack" aria-labelledby="add-entry">
      <h2 id="add-entry">Add what was never said</h2>
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
        <div class="ticket">
          <h3>{chosen.name}</h3>
          <Editor
            key={chosen.name}
            app={app}
            statement={chosen.statement}
            at={app.now.peek()}
            save="Add it"
            onSave={(statement, at) => {
              setKind(undefined);
              void app.addEntry(statement, at);
            }}
          />
        </div>
      )}
    </section>
  );
}

import type { App } from "../app.ts";
import { NewEntry } from "./new-entry.tsx";

/** An entry that was never said. */
export function AddEntry({ app }: { app: App }) {
  return (
    <section class="stack" aria-labelledby="add-entry">
      <h2 id="add-entry">Add what was never said</h2>
      <NewEntry
        app={app}
        at={app.now.peek()}
        onSave={(statement, at) => app.addEntry(statement, at)}
      />
    </section>
  );
}

import { added } from "../../scribe/hand-notes.ts";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";
import { NewEntry } from "./new-entry.tsx";

/** An entry that was never said. After the end it is taken to have happened just before it. */
export function AddEntry({ app }: { app: App }) {
  const { endedAt } = app.session.value;
  return (
    <section class="stack" aria-labelledby="add-entry">
      <h2 id="add-entry">{reviewWords.add.title}</h2>
      <NewEntry
        app={app}
        at={endedAt === undefined ? app.now.peek() : endedAt - 1}
        notes={added}
        onSave={(statement, at) => app.addEntry(statement, at)}
      />
    </section>
  );
}

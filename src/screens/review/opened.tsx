import { useState } from "preact/hooks";
import type { Entry } from "../../log/session.ts";
import { corrected } from "../../scribe/hand-notes.ts";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";
import { Editor } from "./editor.tsx";
import { History } from "./history.tsx";
import { Joining } from "./joining.tsx";
import { HeardWords, OtherReadings } from "./readings.tsx";
import { Splitting } from "./splitting.tsx";

const { opened: words } = reviewWords;

interface OpenedProps {
  app: App;
  entry: Entry;
  close: () => void;
}

/** One entry with all that can be done about it. */
export function Opened({ app, entry, close }: OpenedProps) {
  const [isMore, setMore] = useState(false);
  return (
    <div class="ticket opened">
      <HeardWords heard={entry.heard} />
      <OtherReadings app={app} entry={entry} />
      <Editor
        // What was changed by voice meanwhile is what is put right now.
        key={JSON.stringify(entry.statement)}
        app={app}
        entry={entry}
        statement={entry.statement}
        at={entry.at}
        save={words.save}
        notes={(statement, at) => corrected(entry, statement, at)}
        onSave={(statement, at) => {
          void app.correct(entry, statement, at);
          close();
        }}
      />
      <div class="row">
        <button type="button" class="button" onClick={close}>
          {words.leave}
        </button>
        <button type="button" class="button button-take-out" onClick={() => app.withdraw(entry)}>
          {words.takeOut}
        </button>
        <button
          type="button"
          class="button"
          aria-expanded={isMore}
          onClick={() => setMore(!isMore)}
        >
          {words.more}
        </button>
      </div>
      {isMore && (
        <>
          <button
            type="button"
            class="button button-wide"
            onClick={() => app.addEntry(entry.statement, entry.at + 1)}
          >
            {words.oneMore}
          </button>
          <Splitting app={app} entry={entry} />
          <Joining app={app} entry={entry} />
          <History app={app} entry={entry} />
        </>
      )}
    </div>
  );
}

import type { RefObject } from "preact";
import { useState } from "preact/hooks";
import type { Entry } from "../../log/session.ts";
import { corrected } from "../../scribe/hand-notes.ts";
import { formatClock } from "../../ui/format.ts";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";
import { Editor } from "./editor.tsx";
import { Memo } from "./memo.tsx";
import { Neighbours } from "./neighbours.tsx";
import { HeardWords, OtherReadings } from "./readings.tsx";
import { sayShown } from "./words.ts";

const { toCheck: words, opened } = reviewWords;

interface ToCheckProps {
  app: App;
  /** The entry in question; undefined once all are looked at. */
  entry: Entry | undefined;
  left: number;
  /** Comes back to it when the others are done. */
  onLater: (entry: Entry) => void;
  /** What the keyboard goes on from. */
  heading: RefObject<HTMLHeadingElement | null>;
}

/** What was marked for a look, one at a time, with all that can be done about it. */
export function ToCheck({ app, entry, left, onLater, heading }: ToCheckProps) {
  const hasEntries = app.session.value.entries.length > 0;
  return (
    <section class="stack" aria-labelledby="to-check">
      <div class="row row-apart">
        <h2 id="to-check" ref={heading} tabIndex={-1}>
          {words.title}
        </h2>
        {entry && <p class="label">{words.left(left)}</p>}
      </div>
      {entry ? (
        <Doubtful
          key={entry.id}
          app={app}
          entry={entry}
          {...(left > 1 && { onLater: () => onLater(entry) })}
        />
      ) : (
        <p>{hasEntries ? words.none : words.nothingLogged}</p>
      )}
    </section>
  );
}

interface DoubtfulProps {
  app: App;
  entry: Entry;
  onLater?: () => void;
}

function Doubtful({ app, entry, onLater }: DoubtfulProps) {
  const [isOpen, setOpen] = useState(false);
  const said = sayShown(entry.statement, app.settings.value);
  return (
    <article class="ticket doubtful">
      <h3 class="doubtful-said">
        {formatClock(entry.at)} {said}
      </h3>
      <HeardWords heard={entry.heard} />
      <Memo app={app} id={entry.id} />
      <Neighbours app={app} entry={entry} />
      <button
        type="button"
        class="button button-main button-wide"
        onClick={() => app.settle(entry)}
      >
        {reviewWords.rightAsItIs}
      </button>
      <OtherReadings app={app} entry={entry} />
      <div class="row">
        <button
          type="button"
          class="button"
          aria-expanded={isOpen}
          onClick={() => setOpen(!isOpen)}
        >
          {words.somethingElse}
        </button>
        <button type="button" class="button button-take-out" onClick={() => app.withdraw(entry)}>
          {opened.takeOut}
        </button>
        {onLater && (
          <button type="button" class="button" onClick={onLater}>
            {words.later}
          </button>
        )}
      </div>
      {isOpen && (
        <Editor
          app={app}
          entry={entry}
          statement={entry.statement}
          at={entry.at}
          save={opened.save}
          notes={(statement, at) => corrected(entry, statement, at)}
          onSave={(statement, at) => app.correct(entry, statement, at)}
        />
      )}
    </article>
  );
}

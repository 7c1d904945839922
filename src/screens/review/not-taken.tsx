import { useState } from "preact/hooks";
import { LONGEST_TEXT } from "../../../grammar/statement.ts";
import { isEntryStatement } from "../../log/event.ts";
import type { HeardLine } from "../../log/session.ts";
import { adopted } from "../../scribe/hand-notes.ts";
import { formatClock } from "../../ui/format.ts";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";
import { Memo } from "./memo.tsx";
import { NewEntry } from "./new-entry.tsx";
import { guessesOf } from "./readings.tsx";
import { sayShown } from "./words.ts";

const { notTaken: words } = reviewWords;

/** How many lines are read at a time: reading each takes a phone a few milliseconds. */
const AT_A_TIME = 4;

/** Lines that were heard and taken for talk, the newest first; one touch makes an entry of each. */
export function NotTaken({ app }: { app: App }) {
  const [most, setMost] = useState(AT_A_TIME);
  const lines = [...app.session.value.heardLines].reverse();
  if (lines.length === 0) return null;
  return (
    <section class="stack" aria-labelledby="not-taken">
      <h2 id="not-taken">{words.title(lines.length)}</h2>
      <ul class="cards">
        {lines.slice(0, most).map((line) => (
          <li key={line.id} class="ticket">
            <Line app={app} line={line} />
          </li>
        ))}
      </ul>
      {lines.length > most && (
        <button type="button" class="button" onClick={() => setMost(most + AT_A_TIME)}>
          {words.earlier}
        </button>
      )}
    </section>
  );
}

function Line({ app, line }: { app: App; line: HeardLine }) {
  const [isOpen, setOpen] = useState(false);
  const { id, at, heard } = line;
  const readings = app
    .readings({ text: heard.text, alternatives: guessesOf(heard) })
    .map(({ statements }) => statements.filter(isEntryStatement))
    .filter((statements) => statements.length > 0);
  return (
    <>
      <p>
        {formatClock(at)} “{heard.text}”
      </p>
      <Memo app={app} id={id} />
      <div class="row">
        {readings.map((statements) => (
          <button
            key={JSON.stringify(statements)}
            type="button"
            class="button reading"
            onClick={() => app.adopt(id, statements)}
          >
            {words.log(statements.map((one) => sayShown(one, app.settings.value)).join(", "))}
          </button>
        ))}
        <button
          type="button"
          class="button"
          onClick={() => app.adopt(id, [{ kind: "note", text: heard.text.slice(0, LONGEST_TEXT) }])}
        >
          {words.note}
        </button>
        <button
          type="button"
          class="button"
          aria-expanded={isOpen}
          onClick={() => setOpen(!isOpen)}
        >
          {words.else}
        </button>
      </div>
      {isOpen && (
        <NewEntry
          app={app}
          at={at}
          notes={(statement, when) => adopted(line, [statement], when)}
          onSave={(statement, when) => app.adopt(id, [statement], when)}
        />
      )}
    </>
  );
}

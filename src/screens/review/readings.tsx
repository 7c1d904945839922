import { MOST_ALTERNATIVES } from "../../../grammar/read.ts";
import { same } from "../../log/correction.ts";
import { type EntryStatement, type Heard, isEntryStatement } from "../../log/event.ts";
import type { Entry } from "../../log/session.ts";
import { LEAST_CONFIDENCE } from "../../scribe/judge.ts";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";
import { soundAlikes } from "./sound-alikes.ts";
import { sayShown } from "./words.ts";

const { heard: words } = reviewWords;

/** With the one that is logged, as many as can be told apart at a glance. */
const MOST = 2;

/** Other statements that an entry's words can be read as, best first. */
export function otherReadings(app: App, { heard, statement }: Entry): EntryStatement[] {
  if (!heard?.text) return [];
  const guesses = guessesOf(heard);
  const alternatives = [...guesses, ...[heard.text, ...guesses].flatMap(soundAlikes)];
  const possible = app.readings({ text: heard.text, alternatives }).flatMap(({ statements }) => {
    const entries = statements.filter(isEntryStatement);
    return entries.length === 1 ? entries : entries.filter(({ kind }) => kind === statement.kind);
  });
  const others = possible.filter((one) => !same(one, statement));
  return others
    .filter((one, place) => others.findIndex((other) => same(one, other)) === place)
    .slice(0, MOST);
}

/** What else was guessed, no more than any ears give: a file may hold ever so many. */
export const guessesOf = ({ alternatives = [] }: Heard): readonly string[] =>
  alternatives.slice(0, MOST_ALTERNATIVES);

/** Each other reading as one large button. */
export function OtherReadings({ app, entry }: { app: App; entry: Entry }) {
  const others = otherReadings(app, entry);
  if (others.length === 0) return null;
  return (
    <div class="stack">
      <p class="label">{reviewWords.toCheck.orWasIt}</p>
      {others.map((statement) => (
        <button
          key={JSON.stringify(statement)}
          type="button"
          class="button button-wide reading"
          onClick={() => app.correct(entry, statement)}
        >
          {sayShown(statement, app.settings.value)}
        </button>
      ))}
    </div>
  );
}

/** What was heard, with what else it might have been. */
export function HeardWords({ heard }: { heard: Heard | undefined }) {
  if (!heard?.text || heard.by === "touched") return <p>{words.touched}</p>;
  const { text, by, confidence = 1 } = heard;
  const alternatives = guessesOf(heard);
  return (
    <p>
      {words.by[by]}: {words.words(text)}
      {alternatives.length > 0 && `, ${words.or(alternatives)}`}
      {confidence < LEAST_CONFIDENCE && `. ${words.faintly}`}
    </p>
  );
}

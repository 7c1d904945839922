import { same } from "../../log/correction.ts";
import { type EntryStatement, type Heard, isEntryStatement } from "../../log/event.ts";
import type { Entry } from "../../log/session.ts";
import type { App } from "../app.ts";
import { sayShown } from "./words.ts";

/** As many as can be told apart at a glance. */
const MOST = 4;

/** Other statements that an entry's words can be read as, best first. */
export function otherReadings(app: App, { heard, statement }: Entry): EntryStatement[] {
  if (!heard) return [];
  const possible = app.readings(heard).flatMap(({ statements }) => {
    const entries = statements.filter(isEntryStatement);
    return entries.length === 1 ? entries : entries.filter(({ kind }) => kind === statement.kind);
  });
  const others = possible.filter((one) => !same(one, statement));
  return others
    .filter((one, place) => others.findIndex((other) => same(one, other)) === place)
    .slice(0, MOST);
}

/** Each other reading as one large button. */
export function OtherReadings({ app, entry }: { app: App; entry: Entry }) {
  const others = otherReadings(app, entry);
  if (others.length === 0) return null;
  return (
    <div class="stack">
      <p class="label">Or was it</p>
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
  if (!heard?.text) return <p>Entered by touch</p>;
  const { alternatives = [], by } = heard;
  return (
    <p>
      {by === "typed" ? "Typed" : "Heard"}: “{heard.text}”
      {alternatives.length > 0 && `, or “${alternatives.join("”, “")}”`}
    </p>
  );
}

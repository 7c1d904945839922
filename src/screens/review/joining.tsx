import type { EntryStatement } from "../../log/event.ts";
import type { Entry } from "../../log/session.ts";
import { asOne, together } from "../../log/splitting.ts";
import { formatClock } from "../../ui/format.ts";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";
import { sayShown } from "./words.ts";

const { opened: words } = reviewWords;

interface Join {
  /** The entry that it is joined with. */
  other: Entry;
  statement: EntryStatement;
  isOne: boolean;
}

/** Joins the entry with the one of its kind before or after it, where that makes sense. */
export function Joining({ app, entry }: { app: App; entry: Entry }) {
  const joins = joinsOf(app.session.value.entries, entry);
  if (joins.length === 0) return null;
  return (
    <div class="stack">
      <p class="label">{words.join}</p>
      {joins.map(({ other, statement, isOne }) => {
        const said = sayShown(statement, app.settings.value);
        const name = isOne ? words.asOne : words.together;
        const [first, second] = other.at <= entry.at ? [other, entry] : [entry, other];
        return (
          <button
            key={`${other.id}-${isOne}`}
            type="button"
            class="button button-wide"
            onClick={() => app.join(first, second, statement)}
          >
            {name(formatClock(other.at), said)}
          </button>
        );
      })}
    </div>
  );
}

function joinsOf(entries: readonly Entry[], entry: Entry): Join[] {
  const place = entries.findIndex(({ id }) => id === entry.id);
  const isAlike = ({ statement }: Entry) => statement.kind === entry.statement.kind;
  const others = [
    entries.slice(0, place).findLast(isAlike),
    entries.slice(place + 1).find(isAlike),
  ];
  return others.flatMap((other): Join[] => {
    if (!other) return [];
    const [one, sum] = [asOne, together].map((join) => join(entry.statement, other.statement));
    return [
      ...(one ? [{ other, statement: one, isOne: true }] : []),
      ...(sum ? [{ other, statement: sum, isOne: false }] : []),
    ];
  });
}

import type { Entry } from "../../log/session.ts";
import { formatClock } from "../../ui/format.ts";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";
import { sayShown } from "./words.ts";

const { toCheck: words } = reviewWords;

/** What happened next to a moment, where anything did. @param entries in order of time */
export function besides(
  entries: readonly Entry[],
  at: number,
): { before: Entry | undefined; after: Entry | undefined } {
  return {
    before: entries.findLast((one) => one.at <= at),
    after: entries.find((one) => one.at > at),
  };
}

/** What was logged right before and right after an entry. */
export function Neighbours({ app, entry }: { app: App; entry: Entry }) {
  const { entries } = app.session.value;
  const place = entries.findIndex(({ id }) => id === entry.id);
  return (
    <dl class="neighbours">
      <Neighbour app={app} name={words.before} entry={entries[place - 1]} none={words.first} />
      <Neighbour app={app} name={words.after} entry={entries[place + 1]} none={words.last} />
    </dl>
  );
}

interface NeighbourProps {
  app: App;
  name: string;
  entry: Entry | undefined;
  /** What is said where there is none. */
  none: string;
}

function Neighbour({ app, name, entry, none }: NeighbourProps) {
  return (
    <>
      <dt>{name}</dt>
      <dd>
        {entry ? `${formatClock(entry.at)} ${sayShown(entry.statement, app.settings.value)}` : none}
      </dd>
    </>
  );
}

import { type Signal, useSignal } from "@preact/signals";
import type { Digest } from "../../scribe/season/digest.ts";
import { timeOf } from "../../scribe/season/query.ts";
import type { Season } from "../../scribe/season/season.ts";
import { sessionsWords } from "../../words/sessions.ts";
import type { App } from "../app.ts";
import { Row } from "./row.tsx";
import { TakenOutRow } from "./taken-out-row.tsx";

const words = sessionsWords.list;

/** More at once only make the thumb tired. */
const AT_ONCE = 30;

interface ListProps {
  app: App;
  season: Season;
  /** Those that fit, the newest first, of so many. */
  digests: readonly Digest[];
  of: number;
  chosen: Signal<readonly Digest[]>;
}

/** The sessions, the newest first; one just deleted leaves a way back in its place. */
export function List({ app, season, digests, of, chosen }: ListProps) {
  const most = useSignal(AT_ONCE);
  const takenOut = season.takenOut.value;
  if (of === 0 && !takenOut) return null;
  const shown = digests.slice(0, most.value);
  const before = takenOut
    ? shown.filter((digest) => timeOf(digest) > timeOf(takenOut.digest)).length
    : shown.length;
  const row = (digest: Digest) => (
    <Row key={digest.id} app={app} season={season} digest={digest} chosen={chosen} />
  );
  return (
    <section class="stack" aria-labelledby="session-list">
      <h2 id="session-list">
        {digests.length === of ? words.title(of) : words.fits(digests.length, of)}
      </h2>
      {chosen.value.length === 1 && <p role="status">{words.chooseOther}</p>}
      <ul class="session-cards">
        {shown.slice(0, before).map(row)}
        {takenOut && <TakenOutRow key={takenOut.digest.id} takenOut={takenOut} />}
        {shown.slice(before).map(row)}
      </ul>
      {digests.length === 0 && <p>{words.nothing}</p>}
      {digests.length > shown.length && (
        <button
          type="button"
          class="button"
          onClick={() => {
            most.value += AT_ONCE;
          }}
        >
          {words.more(Math.min(AT_ONCE, digests.length - shown.length))}
        </button>
      )}
    </section>
  );
}

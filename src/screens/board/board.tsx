/** A shared board: read, and nothing else. */
import "./board.css";
import { useEffect } from "preact/hooks";
import { isForWatching } from "../../board/subjects.ts";
import { formatClock } from "../../ui/format.ts";
import { boardWords } from "../../words/board.ts";
import { joinWords } from "../../words/join.ts";
import type { BoardView, Reading } from "../app/board.ts";
import type { App } from "../app.ts";
import { OverAll } from "./pooled.tsx";
import { Rows } from "./rows.tsx";

export function BoardScreen({ app }: { app: App }) {
  const { board } = app;
  const joined = board.membership.value;
  const isJoined = joined !== undefined;
  // It is read while somebody looks, which costs the phone less than all day.
  useEffect(() => (isJoined ? board.follow() : undefined), [board, isJoined]);
  if (!joined) return <NotJoined />;
  return (
    <>
      <h1>{boardWords.named(joined.invitation.board)}</h1>
      <div>
        <a class="button" href="#join">
          {isForWatching(joined.invitation.seat)
            ? joinWords.manage.watching
            : joinWords.manage.sending}
        </a>
      </div>
      <Reads app={app} />
    </>
  );
}

function NotJoined() {
  return (
    <>
      <h1>{boardWords.title}</h1>
      <p>{boardWords.notJoined}</p>
      <div>
        <a class="button" href="#join">
          {boardWords.join}
        </a>
      </div>
    </>
  );
}

function Reads({ app }: { app: App }) {
  const reading = app.board.reading.value;
  const view = viewOf(reading);
  return (
    <>
      <p role="status">{readingText(reading)}</p>
      {view && view.rows.length > 0 && (
        <>
          <OverAll pooled={view.pooled} settings={app.settings.value} />
          <Rows view={view} settings={app.settings.value} />
        </>
      )}
      {view && view.damaged > 0 && <p class="warn">{boardWords.damaged(view.damaged)}</p>}
    </>
  );
}

const viewOf = (reading: Reading): BoardView | undefined =>
  "view" in reading ? reading.view : undefined;

function readingText(reading: Reading): string {
  const words = boardWords.reading;
  switch (reading.is) {
    case "refused":
      return reading.why;
    case "out-of-reach": {
      const stood = reading.view && words.asAt(formatClock(reading.view.at));
      return [words.outOfReach, stood].filter(Boolean).join(" ");
    }
    case "live":
      return reading.view.rows.length === 0
        ? boardWords.nobody
        : words.live(reading.view.rows.length);
    default:
      return words.opening;
  }
}

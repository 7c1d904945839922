import type { Entry } from "../../log/session.ts";
import { formatClock } from "../../ui/format.ts";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";
import { historyLines } from "./history-lines.ts";

const { history: words } = reviewWords;

/** What was heard, and what was done about it since. */
export function History({ app, entry }: { app: App; entry: Entry }) {
  return (
    <div>
      <p class="label">{words.title}</p>
      <ol class="history">
        {historyLines(entry, app.settings.value).map(({ id, at, text, device }) => (
          <li key={id}>
            <span class="entry-time">{formatClock(at)}</span> {text} ({words.device(device)})
          </li>
        ))}
      </ol>
    </div>
  );
}

import { formatDuration } from "../ui/format.ts";
import { appWords } from "../words/app.ts";
import type { App } from "./app.ts";

const MS_PER_MINUTE = 60_000;

/** Which water and peg, and how the session stands. */
export function Where({ app }: { app: App }) {
  const { plan, state } = app.session.value;
  const place = [plan.peg && appWords.peg(plan.peg), plan.water].filter(Boolean).join(", ");
  return (
    <p class="masthead-where">
      {place && <span class="masthead-place">{place}</span>}
      <span>
        {appWords.states[state]}
        <Since app={app} />
      </span>
    </p>
  );
}

/** How long ago the session began; the time it took, once it has ended. */
function Since({ app }: { app: App }) {
  const { startedAt, endedAt } = app.session.value;
  if (startedAt === undefined) return null;
  const ms = (endedAt ?? app.now.value) - startedAt;
  return ms < MS_PER_MINUTE ? null : <> {formatDuration(ms)}</>;
}

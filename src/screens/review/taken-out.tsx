import { formatClock } from "../../ui/format.ts";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";
import { sayShown } from "./words.ts";

const { takenOut: words } = reviewWords;

/** Entries that were taken back, the latest first; each can come back. */
export function TakenOut({ app }: { app: App }) {
  const withdrawn = [...app.session.value.withdrawn].reverse();
  if (withdrawn.length === 0) return null;
  return (
    <section class="stack" aria-labelledby="taken-out">
      <h2 id="taken-out">{words.title(withdrawn.length)}</h2>
      <ul class="stack">
        {withdrawn.map((entry) => {
          const said = sayShown(entry.statement, app.settings.value);
          return (
            <li class="row row-apart taken-out" key={entry.id}>
              <span>
                {formatClock(entry.at)} {said}
              </span>
              <button
                type="button"
                class="button"
                onClick={() => app.restore(entry)}
                aria-label={words.backNamed(said)}
              >
                {words.back}
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

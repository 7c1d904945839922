import type { Entry } from "../../log/session.ts";
import { formatClock } from "../../ui/format.ts";
import { Stepper } from "../../ui/stepper.tsx";
import { fieldWords } from "../../words/entry-fields.ts";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";
import { besides } from "./neighbours.tsx";
import { sayShown } from "./words.ts";

const { editor: words } = reviewWords;

const STEPS = [
  { by: 600_000, name: fieldWords.steps.tenMinutes },
  { by: 60_000, name: fieldWords.steps.minute },
];

interface TimeControlProps {
  app: App;
  /** The entry whose time it is, which is no neighbour of its own. */
  entry: Entry | undefined;
  /** As it is, and as it is to be; milliseconds since the epoch. */
  at: number;
  when: number;
  onChange: (when: number) => void;
}

/** When it happened: by the clock, or before or after what happened next to it. */
export function TimeControl({ app, entry, at, when, onChange }: TimeControlProps) {
  const others = app.session.value.entries.filter(({ id }) => id !== entry?.id);
  const { before, after } = besides(others, when);
  const named = (one: Entry) =>
    `${formatClock(one.at)} ${sayShown(one.statement, app.settings.value)}`;
  return (
    <div class="stack">
      <Stepper
        label={words.time}
        value={when}
        format={formatClock}
        steps={STEPS}
        from={at}
        least={0}
        most={Math.max(at, app.now.value)}
        onChange={onChange}
      />
      <div class="stack">
        {before && (
          <button type="button" class="button button-wide" onClick={() => onChange(before.at - 1)}>
            {words.beforeIt(named(before))}
          </button>
        )}
        {after && (
          <button type="button" class="button button-wide" onClick={() => onChange(after.at + 1)}>
            {words.afterIt(named(after))}
          </button>
        )}
      </div>
    </div>
  );
}

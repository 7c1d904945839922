import { useState } from "preact/hooks";
import type { Entry } from "../../log/session.ts";
import { withCount } from "../../log/splitting.ts";
import { Stepper } from "../../ui/stepper.tsx";
import { fieldWords } from "../../words/entry-fields.ts";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";

const { opened: words } = reviewWords;

const STEPS = [{ by: 1, name: fieldWords.steps.one }];

/** An entry of several fish told apart, so that each part gets a weight of its own. */
export function Splitting({ app, entry }: { app: App; entry: Entry }) {
  const { statement } = entry;
  const [off, setOff] = useState(1);
  if (statement.kind !== "fish" || statement.count === undefined || statement.count < 2)
    return null;
  const { count } = statement;
  const rest = Math.min(off, count - 1);
  const split = (counts: readonly number[]) =>
    app.split(
      entry,
      counts.map((one) => withCount(statement, one)),
    );
  return (
    <div class="stack">
      {count > 2 && (
        <Stepper
          label={words.splitOff}
          value={rest}
          format={String}
          steps={STEPS}
          from={1}
          least={1}
          most={count - 1}
          onChange={setOff}
        />
      )}
      <div class="row">
        <button type="button" class="button" onClick={() => split([count - rest, rest])}>
          {words.split(count - rest, rest)}
        </button>
        {count > 2 && (
          <button
            type="button"
            class="button"
            onClick={() => split(Array.from({ length: count }, () => 1))}
          >
            {words.each}
          </button>
        )}
      </div>
    </div>
  );
}

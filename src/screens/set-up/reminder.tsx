import { Stepper } from "../../ui/stepper.tsx";
import { setUpWords } from "../../words/set-up.ts";
import type { App } from "../app.ts";

const { reminder: words, steps } = setUpWords;

const MINUTE_MS = 60_000;

/** A reminder to feed, as it can be said too. */
export function Reminder({ app }: { app: App }) {
  const { reminder } = app.session.value;
  const everyMs = reminder?.everyMs ?? 0;
  const save = (minutes: number) =>
    app.addEntry(
      { kind: "remind", everyMs: minutes * MINUTE_MS, ...(minutes > 0 && { about: words.feed }) },
      app.now.peek(),
    );
  return (
    <section class="ticket">
      <h2>{words.title}</h2>
      <Stepper
        label={words.every}
        value={everyMs / MINUTE_MS}
        format={(minutes) => (minutes === 0 ? words.off : words.minutes(minutes))}
        steps={[{ by: 1, name: steps.minute }]}
        from={0}
        least={0}
        onChange={save}
      />
      <p>{words.about}</p>
    </section>
  );
}

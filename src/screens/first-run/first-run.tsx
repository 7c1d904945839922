/** First steps: the angler says a phrase and sees it understood. They come once by themselves. */
import "./first-run.css";
import { useEffect, useState } from "preact/hooks";
import { lasts } from "../../log/lasts.ts";
import { firstRunWords as words } from "../../words/first-run.ts";
import type { App } from "../app.ts";
import { Hear } from "./hear.tsx";
import { Try } from "./try.tsx";

const STEPS = 3;

export function FirstRun({ app }: { app: App }) {
  // Asked once: the practice is a session of its own, and may well be running.
  const [isBusy] = useState(() => lasts(app.session.peek()));
  useEffect(() => {
    if (isBusy) return;
    app.home.practise();
    return () => app.home.stopPractising();
  }, []);
  return (
    <div class="first-run">
      <h1>{words.title}</h1>
      {isBusy ? <Busy /> : <Steps app={app} />}
    </div>
  );
}

function Busy() {
  return (
    <section class="ticket">
      <p>{words.busy.about}</p>
      <a class="button button-main" href="#live">
        {words.busy.back}
      </a>
    </section>
  );
}

function Steps({ app }: { app: App }) {
  const [at, setAt] = useState(1);
  const isLast = at === STEPS;
  return (
    <>
      <p>{words.about}</p>
      <p class="label" aria-live="polite">
        {words.step(at, STEPS)}
      </p>
      {at === 1 && <Try key="say" app={app} of={words.say} isFirst />}
      {at === 2 && <Try key="correct" app={app} of={words.correct} />}
      {isLast && <Hear app={app} />}
      <div class="first-run-on">
        {!isLast && (
          <a class="button" href="#live">
            {words.skip}
          </a>
        )}
        {isLast ? (
          <a class="button button-main" href="#live">
            {words.done}
          </a>
        ) : (
          <button type="button" class="button button-main" onClick={() => setAt(at + 1)}>
            {words.next}
          </button>
        )}
      </div>
    </>
  );
}

import { liveWords } from "../../words/live.ts";
import type { App, LastHeard } from "../app.ts";

const { last: words } = liveWords;

/** What it last understood, and whether that is safe. */
export function Last({ app }: { app: App }) {
  const last = app.lastHeard.value;
  const interim = app.interim.value;
  if (!last && !interim) return null;
  return (
    <section class={`ticket last ${last ? `last-${last.verdict}` : ""}`} aria-label={words.label}>
      {interim && (
        <p class="last-interim" aria-hidden="true">
          {interim}…
        </p>
      )}
      {last && <Understood app={app} last={last} />}
    </section>
  );
}

function Understood({ app, last }: { app: App; last: LastHeard }) {
  const { text, understood, answer } = last;
  return (
    <>
      <div class="last-head">
        <p class="label">{became(last)}</p>
        <button type="button" class="button" onClick={() => app.takeBack()}>
          {words.takeBack}
        </button>
      </div>
      {understood.length > 0 && (
        <ul class={`last-understood ${understood.length > 2 ? "last-many" : ""}`}>
          {understood.map((line, place) => (
            <li key={place}>{line}</li>
          ))}
        </ul>
      )}
      {answer && <p class="last-answer">{answer}</p>}
      {text && <p class="last-heard">“{text}”</p>}
    </>
  );
}

/** What became of it: a question is answered, talk is left out, the rest is stored or waits. */
function became({ verdict, understood, isStored, answer }: LastHeard): string {
  if (verdict === "ignore" || understood.length === 0) {
    return answer ? words.answered : words.notForTheLog;
  }
  if (!isStored) return words.waiting;
  return verdict === "check" ? words.marked : words.stored;
}

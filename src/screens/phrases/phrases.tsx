/** What can be said, by topic. */
import "./phrases.css";
import { useMemo } from "preact/hooks";
import { phrasePage } from "../../../grammar/phrase-page.ts";
import type { App } from "../app.ts";

export function Phrases({ app }: { app: App }) {
  const topics = useMemo(phrasePage, []);
  const { callWord } = app.settings.value;
  return (
    <>
      <h1>What you can say</h1>
      <p>
        Say it in your own words, near to these. Several things may go in one breath: “fish, two
        pounds, ten centimetres shallower, feeding”. Slips are put right by “scratch that” or “make
        that three pounds”.
      </p>
      {callWord && <p>The call word is on: only what starts with “{callWord}” counts.</p>}
      <div class="tickets">
        {topics.map(({ title, phrases }) => (
          <section class="ticket" key={title}>
            <h2>{title}</h2>
            <ul class="said-lines">
              {phrases.map(({ id, examples }) => (
                <li key={id}>{examples.map((example) => `“${example}”`).join(" · ")}</li>
              ))}
            </ul>
          </section>
        ))}
      </div>
    </>
  );
}

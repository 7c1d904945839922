/** What can be said, by topic. */
import "./phrases.css";
import { useMemo } from "preact/hooks";
import { phrasePage } from "../../../grammar/phrase-page.ts";
import { phrasesWords } from "../../words/phrases.ts";
import type { App } from "../app.ts";

export function Phrases({ app }: { app: App }) {
  const topics = useMemo(phrasePage, []);
  const { callWord } = app.settings.value;
  return (
    <>
      <h1>{phrasesWords.title}</h1>
      <p>{phrasesWords.about}</p>
      {callWord && <p>{phrasesWords.callWord(callWord)}</p>}
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

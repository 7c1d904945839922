import { useState } from "preact/hooks";
import { firstRunWords } from "../../words/first-run.ts";
import type { App } from "../app.ts";

const { hear: words } = firstRunWords;

/** The voice is tried, with what to do where it is not heard. */
export function Hear({ app }: { app: App }) {
  const [hasVoice, setHasVoice] = useState<boolean>();
  const listen = async () => setHasVoice(await app.home.tryVoice(words.spoken));
  return (
    <section class="ticket">
      <h2>{words.title}</h2>
      <p>{words.about}</p>
      <button type="button" class="button button-main" onClick={listen}>
        {words.button}
      </button>
      {hasVoice !== undefined && (
        <div class="stack" role="status">
          {hasVoice && <p>{words.heard}</p>}
          <p>{hasVoice ? words.silent : words.noVoice}</p>
        </div>
      )}
    </section>
  );
}

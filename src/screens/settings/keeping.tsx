import { settingsWords } from "../../words/settings.ts";
import type { App } from "../app.ts";

const { keeping: words } = settingsWords;

/** Whether the browser may clear the log away, and what can be done about it. */
export function KeepingCard({ app: { home } }: { app: App }) {
  const state = home.storage.value;
  return (
    <section class="ticket">
      <h2>{words.title}</h2>
      <p>{words.states[state]}</p>
      {state !== "kept" && (
        <>
          <button type="button" class="button" onClick={() => home.askToKeep()}>
            {words.ask}
          </button>
          <p>{words.safari}</p>
        </>
      )}
      <p>
        {words.export} <a href="#files">{words.exportLink}</a>.
      </p>
    </section>
  );
}

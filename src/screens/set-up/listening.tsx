import { useEffect } from "preact/hooks";
import { Choices } from "../../ui/choices.tsx";
import { listeningWords as words } from "../../words/listening.ts";
import type { EarsKept } from "../app/ears-care.ts";
import type { App } from "../app.ts";
import { MemoChoice } from "../review/memo-choice.tsx";

type Choice = keyof typeof words.choices;

/** Which ears listen, and getting ready for no signal; kept on this phone. */
export function Listening({ app }: { app: App }) {
  const { earsCare } = app;
  const { state, web } = earsCare;
  const [hasWeb, hasInside] = [web.value !== "none", state.value.is !== "impossible"];
  useEffect(() => void earsCare.measure(), [earsCare]);
  return (
    <section class="ticket" id="listening">
      <h2>{words.title}</h2>
      {hasWeb && hasInside && (
        <Choices
          label={words.choice}
          options={(Object.keys(words.choices) as Choice[]).map((value) => ({
            value,
            name: words.choices[value],
          }))}
          value={app.settings.value.ears}
          onChange={(ears) => app.setSettings({ ears })}
        />
      )}
      <p>{words.web[web.value]}</p>
      {hasInside && <p>{words.inside}</p>}
      {!hasWeb && !hasInside && <p>{words.none}</p>}
      <h3>{words.ready.title}</h3>
      <Ready app={app} state={state.value} />
      {hasInside && <MemoChoice app={app} />}
    </section>
  );
}

function Ready({ app, state }: { app: App; state: EarsKept }) {
  const { earsCare } = app;
  switch (state.is) {
    case "impossible":
      return <p>{words.ready.impossible}</p>;
    case "absent":
      return (
        <div class="stack">
          <p>{words.ready.about(state.bytes)}</p>
          {state.trouble && (
            <p class="notice notice-alarm" role="alert">
              {state.trouble}
            </p>
          )}
          <button type="button" class="button button-main" onClick={() => void earsCare.getReady()}>
            {state.isPart ? words.ready.again : words.ready.fetch}
          </button>
        </div>
      );
    case "fetching":
      return <Fetching loaded={state.loaded} total={state.total} />;
    case "kept":
      return (
        <div class="stack">
          <p role="status">
            {state.startsAlone === false ? words.ready.keptInPageOnly : words.ready.kept}
          </p>
          <button type="button" class="button" onClick={() => void earsCare.remove()}>
            {words.ready.remove}
          </button>
        </div>
      );
  }
}

function Fetching({ loaded, total }: { loaded: number; total: number }) {
  return (
    <div class="stack">
      <progress class="fetching" max={total || 1} value={loaded} aria-label={words.ready.title} />
      <p role="status">{words.ready.fetching(loaded, total)}</p>
    </div>
  );
}

/** Two minutes in which the ears inside the app get to know a voice. */
import "./drill.css";
import { useEffect, useRef, useState } from "preact/hooks";
import { drillWords as words } from "../../words/drill.ts";
import type { Drill } from "../app/voice.ts";
import type { App } from "../app.ts";
import { Outcome } from "./outcome.tsx";
import { Recordings } from "./recordings.tsx";
import { Run } from "./run.tsx";

export function DrillScreen({ app }: { app: App }) {
  const [drill, setDrill] = useState<Drill>();
  useEffect(() => () => drill?.stop(), [drill]);
  const isHere = useRef(true);
  useEffect(
    () => () => {
      isHere.current = false;
    },
    [],
  );
  const isReady = app.earsCare.state.value.is === "kept";
  const [isBeginning, setBeginning] = useState(false);
  const begin = async () => {
    setBeginning(true);
    const made = drill ?? (await app.voice.drill());
    // Whoever left meanwhile is not recorded.
    if (!isHere.current) return;
    setBeginning(false);
    setDrill(made);
    made.start();
  };
  const state = drill?.state.value ?? { is: "ready" as const };
  return (
    <>
      <h1>{words.title}</h1>
      <p>{words.what}</p>
      <p>{words.private}</p>
      {!isReady && <p class="notice">{words.needsEars}</p>}
      {(state.is === "ready" || state.is === "done" || state.is === "failed") && (
        <button
          type="button"
          class="button button-main button-wide"
          disabled={!isReady || isBeginning}
          onClick={() => void begin()}
        >
          {words.start}
        </button>
      )}
      {drill && <Run drill={drill} state={state} />}
      {state.is === "done" && <Outcome app={app} outcome={state.outcome} />}
      {drill && state.is === "done" && <Recordings drill={drill} />}
      <Choice app={app} />
    </>
  );
}

/** What is in use, and the way back. */
function Choice({ app }: { app: App }) {
  const isOwn = app.settings.value.voice !== undefined;
  return (
    <section class="ticket">
      <p role="status">{isOwn ? words.own : words.usual}</p>
      {isOwn && (
        <button type="button" class="button" onClick={() => app.setSettings({ voice: undefined })}>
          {words.reset}
        </button>
      )}
    </section>
  );
}

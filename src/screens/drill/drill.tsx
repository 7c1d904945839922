/** Two minutes in which the ears inside the app get to know a voice. */
import "./drill.css";
import { useEffect, useRef, useState } from "preact/hooks";
import { appWords } from "../../words/app.ts";
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
  const [asked, setAsked] = useState<"no" | "waiting" | "failed">("no");
  const begin = async () => {
    setAsked("waiting");
    const made = drill ?? (await app.voice.drill().catch(() => undefined));
    // Whoever left meanwhile is not recorded.
    if (!isHere.current) return;
    setAsked(made ? "no" : "failed");
    setDrill(made);
    made?.start();
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
          disabled={!isReady || asked === "waiting"}
          onClick={() => void begin()}
        >
          {words.start}
        </button>
      )}
      {asked === "failed" && (
        <p class="notice" role="alert">
          {appWords.notWhole.what} {appWords.notWhole.todo}
        </p>
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

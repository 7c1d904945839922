import { useState } from "preact/hooks";
import { firstRunWords as words } from "../../words/first-run.ts";
import type { App } from "../app.ts";
import { Ears } from "../live/ears.tsx";
import { Typing } from "../live/typing.tsx";

interface TryProps {
  app: App;
  of: { title: string; about: string; phrase: string };
  /** Says where the sound goes, before the microphone is opened for the first time. */
  isFirst?: boolean;
}

/** A phrase to say or type, and what became of it. */
export function Try({ app, of: { title, about, phrase }, isFirst = false }: TryProps) {
  return (
    <>
      <Ears app={app} />
      {isFirst && app.hearing.value.sendsSound && <WhereSoundGoes />}
      <section class="ticket">
        <h2>{title}</h2>
        <p>{about}</p>
        <p class="first-run-phrase">“{phrase}”</p>
        <Understood app={app} />
      </section>
      <Typing app={app} />
    </>
  );
}

function WhereSoundGoes() {
  return (
    <p>
      {words.say.privacy} <a href="#set-up">{words.say.offline}</a>.
    </p>
  );
}

function Understood({ app }: { app: App }) {
  // What the step before heard stays with it.
  const [earlier] = useState(() => app.lastHeard.peek());
  const last = app.lastHeard.value;
  const interim = app.interim.value;
  if (!last || last === earlier) return interim ? <p aria-hidden="true">{interim}…</p> : null;
  const { understood } = last;
  return (
    <div class="first-run-understood">
      {understood.length > 0 ? (
        <>
          <p class="label">{words.understood}</p>
          <ul>
            {understood.map((line, place) => (
              <li key={place}>{line}</li>
            ))}
          </ul>
          <p>{words.well}</p>
        </>
      ) : (
        <p>{words.notTaken}</p>
      )}
    </div>
  );
}

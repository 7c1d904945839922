import "./ears.css";
import { listeningWords } from "../../words/listening.ts";
import type { App } from "../app.ts";
import { earsWords } from "./ears-words.ts";

/** Is it listening, with which ears, and if not, what to do. One button starts and stops it. */
export function Ears({ app }: { app: App }) {
  const hearing = app.hearing.value;
  const { state, which, button, starts } = earsWords(hearing);
  const { is, trouble } = hearing;
  return (
    <section class={`ears ears-${is}`} aria-labelledby="ears-state">
      <FloatOnWater stands={!starts} />
      <h2 id="ears-state">{state}</h2>
      <button
        type="button"
        class="ears-button"
        onClick={() => (starts ? app.startListening() : app.stopListening())}
      >
        {button}
      </button>
      {which && <p class="ears-which">{which}</p>}
      <Offer app={app} />
      {trouble && (
        <p class="ears-trouble">
          <strong>{trouble.what}</strong> {trouble.todo}
        </p>
      )}
    </section>
  );
}

/** The way to ears that send nothing and need no signal, while nobody listens yet. */
function Offer({ app }: { app: App }) {
  const { is, sendsSound } = app.hearing.value;
  const isNeeded = is === "unavailable" || (is === "off" && sendsSound);
  if (!isNeeded || app.earsCare.state.value.is === "impossible") return null;
  return (
    <a class="ears-offer" href="#set-up">
      {listeningWords.live.instead}
    </a>
  );
}

/** Stands while it listens, lies flat while it does not; the words beside it say the same. */
function FloatOnWater({ stands }: { stands: boolean }) {
  return (
    <svg class="ears-float" viewBox="0 0 64 64" aria-hidden="true">
      {stands ? (
        <>
          <path d="M32 4v22" class="ears-float-tip" />
          <path d="M32 22c11 10 11 22 0 38c-11-16-11-28 0-38z" class="ears-float-body" />
        </>
      ) : (
        <>
          <path d="M4 32l18 2" class="ears-float-tip" />
          <path d="M18 33c12-9 24-8 42 4c-18 7-32 6-42-4z" class="ears-float-body" />
        </>
      )}
      <path d="M2 44q7.500-6 15 0t15 0t15 0t15 0" class="ears-float-water" />
    </svg>
  );
}

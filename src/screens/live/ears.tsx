import type { App } from "../app.ts";
import { earsWords } from "./ears-words.ts";

/** Is it listening, with which ears, and if not, what to do. One button starts and stops it. */
export function Ears({ app }: { app: App }) {
  const hearing = app.hearing.value;
  const { state, which, button, starts } = earsWords(hearing);
  const { is, trouble } = hearing;
  return (
    <section class={`ears ears-${is}`} aria-labelledby="ears-state">
      <FloatOnWater />
      <div class="ears-words">
        <h2 id="ears-state">{state}</h2>
        {which && <p>{which}</p>}
        {is === "listening" && !app.isAwake.value && <p>The screen may switch itself off.</p>}
      </div>
      <button
        type="button"
        class="ears-button"
        onClick={() => (starts ? app.startListening() : app.stopListening())}
      >
        {button}
      </button>
      {trouble && (
        <p class="ears-trouble">
          <strong>{trouble.what}</strong> {trouble.todo}
        </p>
      )}
    </section>
  );
}

/** Stands while it listens, lies flat while it does not; the words beside it say the same. */
function FloatOnWater() {
  return (
    <svg class="ears-float" viewBox="0 0 48 64" aria-hidden="true">
      <g class="ears-float-stem">
        <path d="M24 4v22" class="ears-float-tip" />
        <path d="M24 24c10 10 10 20 0 34c-10-14-10-24 0-34z" class="ears-float-body" />
      </g>
      <path d="M2 40q6-5 11 0t11 0t11 0t11 0" class="ears-float-water" />
    </svg>
  );
}

import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";

const { steps: words } = reviewWords;

/** Undo and redo, always in sight. */
export function StepsBar({ app }: { app: App }) {
  return (
    <fieldset class="steps-bar" aria-label={words.label}>
      <button type="button" class="button" disabled={!app.canUndo.value} onClick={() => app.undo()}>
        {words.undo}
      </button>
      <button type="button" class="button" disabled={!app.canRedo.value} onClick={() => app.redo()}>
        {words.redo}
      </button>
    </fieldset>
  );
}

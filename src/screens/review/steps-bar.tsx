import type { App } from "../app.ts";

/** Undo and redo, always in sight. */
export function StepsBar({ app }: { app: App }) {
  return (
    <fieldset class="steps-bar" aria-label="Corrections">
      <button type="button" class="button" disabled={!app.canUndo.value} onClick={() => app.undo()}>
        Undo
      </button>
      <button type="button" class="button" disabled={!app.canRedo.value} onClick={() => app.redo()}>
        Redo
      </button>
    </fieldset>
  );
}

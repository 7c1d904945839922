import { DRILL_PHRASES, drillWords as words } from "../../words/drill.ts";
import type { Drill, DrillState } from "../app/voice.ts";

/** What is to be done now. */
export function Run({ drill, state }: { drill: Drill; state: DrillState }) {
  switch (state.is) {
    case "starting":
      return <p role="status">{words.starting}</p>;
    case "reading":
      return <Reading drill={drill} state={state} />;
    case "quiet":
    case "chat":
      return (
        <section class="ticket" aria-live="polite">
          <p class="drill-phrase">{words[state.is](state.seconds)}</p>
        </section>
      );
    case "working":
      return <p role="status">{words.working}</p>;
    case "failed":
      return (
        <p class="notice notice-alarm" role="alert">
          {words.failed}
        </p>
      );
    default:
      return null;
  }
}

interface ReadingProps {
  drill: Drill;
  state: Extract<DrillState, { is: "reading" }>;
}

/** One phrase; whoever reads it again puts the new try in place of the old. */
function Reading({ drill, state: { index, phrase, heard } }: ReadingProps) {
  return (
    <section class="ticket">
      <p class="label">{words.reading(index + 1, DRILL_PHRASES.length)}</p>
      <p class="drill-phrase" aria-live="polite">
        {phrase}
      </p>
      <p role="status">{heard === undefined ? words.listening : words.heard(heard)}</p>
      <button type="button" class="button button-main button-wide" onClick={() => drill.next()}>
        {heard === undefined ? words.skip : words.next}
      </button>
      <button type="button" class="button" onClick={() => drill.stop()}>
        {words.stop}
      </button>
    </section>
  );
}

import { isForWatching } from "../../board/subjects.ts";
import { joinWords } from "../../words/join.ts";
import { liveWords } from "../../words/live.ts";
import type { App } from "../app.ts";
import { Cautions } from "./cautions.tsx";

const { before: words } = liveWords;

/** How many times faster than it was fished the sample is played: four hours in about two minutes. */
const SAMPLE_SPEED = 120;

/** What is read before a session starts, and never stands in the way afterwards. */
export function Before({ app }: { app: App }) {
  const start = () => app.addEntry({ kind: "session", act: "start" }, app.now.value);
  return (
    <section class="before" aria-label={words.label}>
      <div class="ticket begin">
        <h2>{words.title}</h2>
        <p>{words.about}</p>
        <button type="button" class="button button-main" onClick={start}>
          {words.start}
        </button>
        <GoesToBoard app={app} />
        {!app.sample.value && (
          <button type="button" class="button" onClick={() => app.playSample(SAMPLE_SPEED)}>
            {words.sample}
          </button>
        )}
        <div class="begin-ways">
          <a class="button" href="#set-up">
            {words.water}
          </a>
          <a class="button" href="#phrases">
            {words.phrases}
          </a>
        </div>
      </div>
      <Cautions />
    </section>
  );
}

/** A board that was joined for one day is easily forgotten on the next. */
function GoesToBoard({ app }: { app: App }) {
  const membership = app.board.membership.value;
  if (!membership || isForWatching(membership.invitation.seat)) return null;
  return (
    <a class="button" href="#join">
      {joinWords.goesToBoard(membership.invitation.board)}
    </a>
  );
}

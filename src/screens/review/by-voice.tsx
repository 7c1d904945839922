import { Tick } from "../../ui/choices.tsx";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";
import { Typing } from "../live/typing.tsx";

const { voice: words } = reviewWords;

interface ByVoiceProps {
  app: App;
  /** Each question is read out as it comes up. */
  isAloud: boolean;
  onAloud: (isAloud: boolean) => void;
}

/** Puts right by saying: the entry on the screen is what "that" means. */
export function ByVoice({ app, isAloud, onAloud }: ByVoiceProps) {
  const answer = app.lastHeard.value?.answer;
  return (
    <section class="stack by-voice" aria-label={words.label}>
      <Tick label={words.aloud} value={isAloud} onChange={onAloud} />
      <Typing app={app} />
      {answer && <p>{answer}</p>}
      <p class="soft">{words.hint}</p>
    </section>
  );
}

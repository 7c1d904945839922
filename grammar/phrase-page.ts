/** What can be said, by topic, for the page that shows it. */
import { PHRASES } from "./phrases/index.ts";

export interface PhraseTopic {
  title: string;
  phrases: { id: string; examples: string[] }[];
}

/** Topics in the order of a day's fishing, with the ids of their phrases. */
const TOPICS: readonly [title: string, ids: string][] = [
  ["The session", "session-start session-pause session-resume session-stop"],
  ["Fish", "fish one-more weight-only"],
  ["Fish lost", "lost lost-several hook-pulled snapped lost-foul"],
  ["Bites and drops", "drop bite missed knock liner"],
  ["Feed", "feeding fed-by fed-measure"],
  ["Depth", "depth depth-by deeper-or-shallower"],
  ["Distance", "distance distance-by"],
  ["Rig, hook and bait", "rig hook hook-bait bare-bait lash lash-by"],
  ["Nets", "net"],
  ["Putting it right", "correction corrected-size corrected-foul withdraw"],
  [
    "Questions",
    "ask-total ask-count ask-lost ask-bites ask-biggest ask-fed ask-last-fish ask-rate ask-best-depth ask-best-rig ask-best-bait ask-best-distance ask-best-hook ask-best-hour ask-start ask-bite-depth ask-bite-time ask-mood ask-sure ask-again ask-net ask-pace ask-time-left ask-set-up",
  ],
  ["Weather and water", "wind sky water-temperature air-temperature"],
  ["Notes and nudges", "note nudge no-nudge"],
  ["How much it says", "talkback-tones talkback-short talkback-full"],
];

export function phrasePage(): PhraseTopic[] {
  return TOPICS.map(([title, ids]) => ({
    title,
    phrases: ids.split(" ").map((id) => {
      const phrase = PHRASES.find((candidate) => candidate.id === id);
      return { id, examples: Object.keys(phrase?.examples ?? {}) };
    }),
  }));
}

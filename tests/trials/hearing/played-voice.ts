/** A browser's speech synthesis that takes its time, and at times forgets to tell that it is done. */
import type { Synthesis } from "../../../src/speech/voice.ts";
import type { FakeClock } from "../../speech/fake-clock.ts";

const LETTER_MS = 60;
const FORGETS = 0.03;

export function playedSynthesis(
  clock: FakeClock,
  random: () => number,
): Synthesis & { spoken(): number } {
  let spoken = 0;
  class Utterance {
    onend: (() => void) | null = null;
    onerror: (() => void) | null = null;
    constructor(readonly text: string) {}
  }
  const synth = {
    getVoices: () => [],
    speak(utterance: Utterance) {
      spoken += 1;
      const forgets = random() < FORGETS;
      clock.setTimeout(() => {
        if (!forgets) utterance.onend?.();
      }, LETTER_MS * utterance.text.length);
    },
    cancel() {},
  };
  return { synth, Utterance, spoken: () => spoken } as unknown as Synthesis & { spoken(): number };
}

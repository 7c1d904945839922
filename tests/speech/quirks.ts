/** What browsers are known to do, each as a script. Sources are named beside each. */

import {
  audio,
  end,
  error,
  final,
  interim,
  results,
  type Script,
  speech,
} from "./fake-recognition.ts";

export const plain: Script = {
  name: "plain",
  steps: [
    [100, audio],
    [1_000, speech],
    [1_300, results(interim("fish"))],
    [1_600, results(interim("fish two pounds"))],
    [2_200, results(final("fish two pounds", 0.9, "fish to pounds", "dish two pounds"))],
  ],
};

/** Web Speech API draft: start() while running; annyang meets it between end and the next start. */
export const invalidState: Script = {
  name: "start throws",
  steps: [],
  throws: "InvalidStateError",
};

/** Chrome desktop, as observed: a continuous session ends after about 15 s of silence. */
export const silenceEnds: Script = {
  name: "Chrome desktop ends after 15 s of silence",
  steps: [
    [100, audio],
    [15_100, end],
  ],
};

/** Chrome: no-speech after about 8 s. */
export const noSpeech: Script = {
  name: "no-speech after 8 s",
  steps: [
    [100, audio],
    [8_000, error("no-speech")],
    [8_010, end],
  ],
};

/** A missing on-device language has been seen to fire its error without end. */
export const languageWithoutEnd: Script = {
  name: "language-not-supported without end",
  steps: [[50, error("language-not-supported")]],
  onAbort: [],
};

/** Chromium: phrases in a run that does not take them. */
export const phrasesRefused: Script = {
  name: "phrases-not-supported",
  steps: [
    [50, error("phrases-not-supported")],
    [60, end],
  ],
};

/** Some errors fire nothing (Chrome on Android). */
export const deadStart: Script = { name: "start and then nothing", steps: [], onAbort: [] };

/** The same, after the microphone has opened. */
export const deafRun: Script = {
  name: "audio and then nothing",
  steps: [[100, audio]],
  onStop: [],
  onAbort: [],
};

/** Stop is heard, its end is not. */
export const stopWithoutEnd: Script = {
  ...plain,
  name: "no end after stop",
  onStop: [],
  onAbort: [],
};

/** Words still come after the stop, its end does not. */
export const wordsAfterStop: Script = {
  name: "words and no end after stop",
  steps: [[100, audio]],
  onStop: [[200, results(final("fish two pounds"))]],
  onAbort: [],
};

/** Chrome on Android: partial results marked final, confidence 0, one result growing. */
export const partialsMarkedFinal: Script = {
  name: "partials marked final",
  steps: [
    [100, audio],
    [900, results(final("fish", 0))],
    [1_200, results(final("fish two", 0))],
    [1_500, results(final("fish two pounds", 0))],
    [1_900, results(final("fish two pounds", 0.87))],
    [1_950, end],
  ],
};

/** Chrome on Android: each final holds all before it once more, as a result of its own. */
export const cumulativeFinals: Script = {
  name: "cumulative finals",
  steps: [
    [100, audio],
    [900, results(final("fish", 0))],
    [1_200, results(final("fish", 0), final("fish two", 0))],
    [1_600, results(final("fish", 0), final("fish two", 0), final("fish two pounds", 0))],
    [2_000, end],
  ],
};

/** Chrome on Android: the list is replayed from resultIndex 0 before a new final. */
export const replayed: Script = {
  name: "results replayed from the first",
  steps: [
    [100, audio],
    [900, results(interim("bite"))],
    [1_200, results(final("bite"))],
    [1_250, results(final("bite"))],
    [4_000, results(final("bite"), interim("missed it"))],
    [4_600, results(final("bite"), final("missed it"))],
    [4_650, results(final("bite"), final("missed it"))],
  ],
};

/** The same final once more as a further result, then with more words, without anything begun. */
export const repeatedAsNew: Script = {
  name: "final repeated as a further result",
  steps: [
    [100, audio],
    [900, results(interim("fish two pounds"))],
    [1_200, results(final("fish two pounds"))],
    [1_250, results(final("fish two pounds"), final("Fish two pounds."))],
    [
      1_300,
      results(
        final("fish two pounds"),
        final("Fish two pounds."),
        final("fish two pounds feeding"),
      ),
    ],
  ],
};

/** Between the first sound and the last, results are all that is reported. */
export const talksOn: Script = {
  name: "results alone for minutes",
  steps: [
    [100, audio],
    [40_000, results(final("bite"))],
    [80_000, results(final("bite"), final("missed it"))],
    [120_000, results(final("bite"), final("missed it"), final("feeding"))],
  ],
};

/** The angler says the same thing twice, which is no repetition of the browser's. */
export const saidTwice: Script = {
  name: "the same said twice",
  steps: [
    [100, audio],
    [700, speech],
    [900, results(interim("bite"))],
    [1_200, results(final("bite"))],
    [5_000, results(final("bite"), interim("bite"))],
    [5_300, results(final("bite"), final("bite"))],
  ],
};

/** Safari on iOS: finals never come in continuous mode. */
export const neverFinal: Script = {
  name: "finals never come",
  steps: [
    [100, audio],
    [900, results(interim("lost"))],
    [1_200, results(interim("lost one"))],
  ],
};

/** Safari on iOS: the final comes late, worded otherwise. */
export const finalComesLate: Script = {
  ...neverFinal,
  name: "final comes after the words were taken",
  onStop: [
    [300, results(final("Lost 1"))],
    [400, end],
  ],
};

/** The words went on while the network was slow. */
export const wordsComeLate: Script = {
  ...neverFinal,
  name: "more words come after some were taken",
  onStop: [
    [300, results(final("lost one ten centimetres deeper"))],
    [400, end],
  ],
};

/** They went on twice, with a pause between. */
export const wordsComeLater: Script = {
  ...neverFinal,
  name: "more words come twice after some were taken",
  onStop: [
    [300, results(interim("lost one ten centimetres"))],
    [2_000, results(final("lost one ten centimetres deeper"))],
    [2_100, end],
  ],
};

/** Interims come in two pieces, the steady and the shaky (Chrome); the final is one. */
export const interimInPieces: Script = {
  name: "interim in pieces",
  steps: [
    [100, audio],
    [900, results(interim("fish two"), interim(" pounds"))],
    [4_000, results(final("fish two pounds"))],
  ],
  onStop: [
    [100, results(final("fish two pounds"))],
    [200, end],
  ],
};

/** The connection breaks in the middle of an utterance. */
export const brokenOff: Script = {
  name: "network breaks off mid-utterance",
  steps: [
    [100, audio],
    [900, results(interim("lost one"))],
    [1_100, error("network")],
    [1_150, end],
  ],
};

/** Chrome on Android: wind counts as speech long before anyone speaks. */
export const windBeforeWords: Script = {
  name: "wind before words",
  steps: [
    [100, audio],
    [200, speech],
    [14_000, results(interim("bite"))],
    [14_500, results(final("bite"))],
  ],
};

export function failing(code: string): Script {
  return {
    name: code,
    steps: [
      [50, error(code)],
      [60, end],
    ],
  };
}

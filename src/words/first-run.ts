/** First steps: a phrase is said and seen understood, put right, and an answer heard. */
export const firstRunWords = {
  title: "First steps",
  about: "Three steps, under a minute. Nothing of it is kept.",
  step: (at: number, of: number) => `Step ${at} of ${of}`,
  next: "Next",
  skip: "Skip",
  done: "Go to the water",
  say: {
    title: "Say what you caught",
    about:
      "Press the button above and say this, or type it below. A quiet bank and wet hands are served alike.",
    phrase: "F1, two pounds eight",
    privacy:
      "The browser’s own ears may send the sound to its maker. Those inside the app send nothing, and need no signal:",
    offline: "make them ready",
  },
  correct: {
    title: "Put it right by voice",
    about: "Misheard, or a slip of the tongue? Say what it should be, or “scratch that”.",
    phrase: "make that three pounds",
  },
  hear: {
    title: "Hear it answer",
    about: "Tones tell that an entry is stored. Questions are answered aloud.",
    button: "Let me hear it",
    spoken: "Three pounds from one fish.",
    heard: "Heard a tone and then “Three pounds from one fish”? Then all is well.",
    silent:
      "Heard nothing? Turn the volume up, switch silent mode off, and look which speaker or headset the sound goes to.",
    noVoice:
      "This browser has no voice: there are tones alone, and answers stand on the screen. A voice can be added in the phone’s settings, under speech output.",
  },
  understood: "Understood",
  notTaken: "That was taken for talk, which is never logged. Try the words above.",
  well: "That is all there is to it.",
  busy: {
    about:
      "A session runs, and everything said belongs to it. First steps can be taken again once it is over.",
    back: "Back to the session",
  },
} as const;

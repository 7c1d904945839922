/** Which ears listen, getting ready for no signal, and what is said when nothing can hear. */
const megabytes = (bytes: number) => `${(bytes / 1e6).toFixed(1)} MB`;

const TYPING_WORKS = "Until then, type the same phrases into the field.";

export const listeningWords = {
  title: "Listening",
  choice: "Which ears listen",
  choices: { either: "Whichever is better", web: "The browser’s", offline: "Inside the app" },
  web: {
    none: "This browser has no speech recognition.",
    sends:
      "The browser’s ears know every word, need a signal, and send the sound to the browser’s maker.",
    "on-device": "The browser’s ears know every word and hear on this phone; no sound leaves it.",
  },
  inside:
    "The ears inside the app know the phrases only, not free notes. They need no signal, and no sound leaves the phone.",
  none: "Neither can be had in this browser. Typing does the same.",
  ready: {
    title: "Get ready for no signal",
    impossible: "This browser cannot run ears inside the app.",
    about: (bytes: number | undefined) =>
      `Most waters have none. Fetch the ears inside the app once${bytes === undefined ? "" : ` (${megabytes(bytes)})`}; they stay on this phone.`,
    fetch: "Get ready",
    again: "Go on fetching",
    fetching: (loaded: number, total: number) =>
      `Fetching: ${megabytes(loaded)} of ${megabytes(total)}`,
    kept: "Ready: this phone hears without a signal.",
    keptInPageOnly:
      "The ears are kept, but this browser does not keep the app itself: open it while there is a signal, and leave it open.",
    remove: "Remove them",
  },
  trouble: {
    broken: (loaded: number) =>
      `The signal broke off. ${loaded > 0 ? "What came is kept; go on when it is back." : "Try again when it is back."}`,
    full: (bytes: number) =>
      `There is not enough room on this phone: the ears need ${megabytes(bytes)}. Free some, then go on; what came is kept.`,
    failed: "The ears could not be kept. Try again; a private window may refuse to keep them.",
  },
  live: {
    states: {
      off: "Not listening",
      starting: "Opening the microphone",
      listening: "Listening",
      held: "Speaking, then listening",
      waiting: "Waiting to listen again",
      refused: "Not allowed to listen",
      unavailable: "Cannot listen here",
    },
    starts: {
      off: "Start listening",
      starting: undefined,
      listening: undefined,
      held: undefined,
      waiting: undefined,
      refused: "Try again",
      unavailable: "Try again",
    },
    stop: "Stop listening",
    sends: "The browser turns speech into words and sends the sound to its maker to do so.",
    instead: "Use ears inside the app",
    byWeb: (sends: boolean) => `By the browser, ${sends ? "over the network" : "on this phone"}`,
    byOffline: "Inside the app, on this phone",
  },
  orFetch: "Or fetch the ears inside the app in Set-up.",
  fetchFirst: `Fetch the ears inside the app in Set-up, under Listening. ${TYPING_WORKS}`,
  notOnPhone: {
    what: "The browser can’t hear on this phone after all, so I stopped listening.",
    todo: "It would send the sound to its maker. Start listening if that is right, or choose the ears inside the app in Set-up.",
  },
  elsewhere: {
    what: "Another tab is listening.",
    todo: "Go on in that tab, or stop listening there first.",
  },
} as const;

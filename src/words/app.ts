/** The frame around every screen. */
export const appWords = {
  name: "Pegscribe",
  language: "en-GB",
  description: "Writes down an angler's session by ear, with both hands on the pole",
  screens: {
    live: { name: "Live", about: "What was heard, and how it stands" },
    review: { name: "Review", about: "Look at what was doubtful, and put it right" },
    summary: { name: "Summary", about: "The day in figures and pictures" },
    "set-up": { name: "Set-up", about: "Water, peg, rules, rigs and words of your own" },
    more: { name: "More", about: "Everything else" },
    sessions: { name: "Sessions", about: "Earlier days, what they say together, where to start" },
    phrases: { name: "Phrases", about: "What you can say, with examples" },
    settings: { name: "This phone", about: "Units, voice, colours, and how safe the log is" },
    files: { name: "Files", about: "Keep the log, move it to another phone, or take one in" },
    shared: { name: "Passed on", about: "A session that somebody sent" },
    drill: { name: "Your voice", about: "Two minutes for the ears to get to know it" },
    guide: { name: "First steps", about: "Say a phrase and see it understood" },
  },
  ways: "Screens",
  toLookAt: "to look at",
  states: {
    ready: "Not started",
    fishing: "Fishing",
    paused: "On a break",
    ended: "Ended",
  },
  peg: (peg: string) => `Peg ${peg}`,
  opening: "Opening…",
  notOpened: {
    title: "This page did not open",
    about: "Nothing that was logged is lost. Listening goes on.",
    again: "Try again",
  },
  notWhole: {
    what: "The app did not arrive whole.",
    todo: "Load the page again once there is a signal.",
  },
  news: {
    notForTheLog: (heard: string) => `Not for the log: ${heard}`,
    markedForALook: "Marked for a look",
    notStored: "Not stored yet",
  },
} as const;

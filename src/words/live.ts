/** The screen of the bank. */
export const liveWords = {
  title: "Live",
  before: {
    label: "Before you start",
    title: "Begin",
    about:
      "Say “start the session”, or just the first thing that happens: “fish, two pounds”. From then on the phone can lie on the tray.",
    start: "Start the session",
    sample: "Play a sample session",
    water: "Name the water",
    phrases: "What you can say",
  },
  last: {
    label: "Last heard",
    takeBack: "Take it back",
    answered: "Answered",
    notForTheLog: "Not for the log",
    waiting: "Waiting to be stored",
    marked: "Stored, marked for a look",
    stored: "Stored",
  },
  typing: {
    label: "Type a phrase, as you would say it",
    example: "or type: carp, two pounds",
    enter: "Enter",
  },
  ended: {
    label: "Afterwards",
    title: "All out",
    review: "Go through it",
    summary: "See the day",
  },
} as const;

/** What a link that somebody sent says. */
export const sharedWords = {
  title: "A session passed on to you",
  about: "It is only to be looked at. It came with the link, and nothing of it is kept here.",
  asFar: (day: string, clock: string) => `As far as it had got by ${clock} on ${day}.`,
  brief: "Sums only: this short form holds no single fish.",
  opening: "Opening…",
  refusedTitle: "This link did not open",
  broken:
    "The link is not whole: a part of it was lost or changed on the way. Ask for it again, and copy all of it.",
  newer:
    "This link was made by a newer Pegscribe. Close all of its pages, open it again with a signal, and then try the link once more.",
  tooMuch: "The link is far too long to be a session, so it was not unpacked. Ask for it again.",
  ownLog: "Open your own log",
  eachFish: "Each fish",
  moreFish: (entries: number) => `More fish are in the link; not shown here: ${entries}.`,
  howItWent: "How it went",
  fishTable: { at: "Time", fish: "Fish", size: "Size", depth: "Depth" },
  notNamed: "not named",
  print: "Print it",
};

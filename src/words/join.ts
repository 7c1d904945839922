/** Joining a shared board, and leaving it. */
const entries = (count: number): string => (count === 1 ? "1 entry" : `${count} entries`);

export const joinWords = {
  title: "Join a board",
  about:
    "On a board the people of a match, a team or a coach see how it goes on each other’s pegs. Nothing leaves this phone before you join.",
  paste: {
    label: "Your invitation’s link",
    hint: "You get it from whoever runs the board. A square code is read by the phone’s own camera, which opens this page.",
    broken: "This is no invitation, or a part of it was lost on the way. Ask for it again.",
  },
  invited: {
    title: "You are invited",
    to: (board: string, seat: string) => `Board “${board}”, seat “${seat}”.`,
    sendsTo: (host: string) =>
      `What you log goes to ${host}. Everybody with an invitation to this board sees it there.`,
    readsFrom: (host: string) => `The board is at ${host}.`,
    until: (day: string, clock: string) => `The invitation is good until ${day}, ${clock}.`,
    isOver: "This invitation is over. Ask for a new one.",
    toWatch: "This invitation is for watching: it sends nothing of yours.",
    instead: (board: string) => `You leave the board “${board}” by joining this one.`,
    unsafe:
      "The way there is not encrypted. That is for a trial on one machine, not for a day’s fishing.",
  },
  name: "Your name on the board",
  peg: "Peg",
  section: "Section",
  sectionHint: "Where a match is fished in sections.",
  shares: {
    title: "What goes there",
    always:
      "Fish, losses, bites, set-ups, feed, nets, the weather, your limits and corrections, of the session that is open now and of those you begin until you leave. Not the water, and not a word of what was heard or noted.",
    notes: "Notes too",
    heard: "The words as they were heard, too",
  },
  join: "Join",
  watch: "Watch it",
  needsName: "Give the name that you want to be seen by.",
  goesToBoard: (board: string) => `What you log goes to the board “${board}”`,
  manage: { sending: "See how sending goes, or leave", watching: "See what you joined, or leave" },
  joined: {
    title: (board: string) => `You are on the board “${board}”`,
    as: (name: string, seat: string) => `As ${name}, on seat “${seat}”.`,
    watching: "You watch it; nothing of yours is sent.",
    look: "Look at the board",
    leave: "Leave the board",
    afterwards:
      "What has gone there stays there until the board is cleared away. What still waits here is not sent any more. Your own log stays as it is.",
  },
  sending: {
    opening: "Reaching the board…",
    all: "All that you logged is on the board.",
    waiting: (count: number) => `${entries(count)} on the way to the board.`,
    outOfReach: (count: number) =>
      count === 0
        ? "The board is out of reach. It is tried again by itself."
        : `The board is out of reach. ${entries(count)} ${count === 1 ? "waits" : "wait"} here, to go by itself once there is a way.`,
    tooLarge: (count: number) =>
      `${entries(count)} too large for the board: in your log, not on the board.`,
    waits: (count: number) =>
      count === 0 ? "" : `${entries(count)} ${count === 1 ? "waits" : "wait"} here; none is lost.`,
  },
  refused: {
    refused: "The board does not know this invitation. Ask whoever runs it for a new one.",
    expired: "The invitation is over. Ask whoever runs the board for a new one.",
    "not-allowed": "The invitation does not fit this board or this seat. Ask for a new one.",
    full: "The board is full and takes nothing more. Tell whoever runs it.",
    gone: "The server is there, but this board is not on it any more. Ask whoever ran it.",
  },
  notDone: "That could not be stored on this phone. Nothing has changed.",
  notice: {
    label: "The board",
    trouble: "Nothing goes to the board.",
    why: "Why",
  },
} as const;

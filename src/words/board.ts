/** A shared board: how it stands on all pegs. */

const plural = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;

export const boardWords = {
  title: "Board",
  named: (board: string) => `Board “${board}”`,
  notJoined:
    "This phone is on no board. Whoever runs one gives out invitations, as a link or a square code.",
  join: "Join a board",
  reading: {
    opening: "Reading what is on the board already…",
    live: (pegs: number) => `${plural(pegs, "peg")}, live.`,
    outOfReach: "The board is out of reach. It is tried again by itself.",
    asAt: (clock: string) => `This is how it stood at ${clock} by the board’s clock.`,
  },
  nobody: "Nobody has sent anything to this board yet.",
  damaged: (count: number) =>
    count === 1
      ? "One message could not be read and was set aside."
      : `${count} messages could not be read and were set aside.`,
  pooled: {
    title: "Over all pegs",
    best: (what: string, name: string, rate: string, chance: string, basis: string) =>
      `${what}: ${name} is best with ${rate}, over ${basis}. ${chance} that it is.`,
    close: (what: string, first: string, second: string) =>
      `${what}: no clear best. ${first}; ${second}.`,
    one: (name: string, rate: string, basis: string) => `${name} with ${rate}, over ${basis}`,
    alone: (what: string, name: string, rate: string, basis: string) =>
      `${what}: only ${name} so far, with ${rate}, over ${basis}.`,
    tooFew: (what: string, time: string) => `${what}: too few fish to tell, after ${time}.`,
    none: (what: string) => `${what}: none was named.`,
    rate: (rate: string, lower: string, upper: string) =>
      `${rate} fish an hour (${lower} to ${upper})`,
    upTo: (upper: string) => `too few to tell, up to ${upper} fish an hour`,
    basis: (time: string, pegs: number) => `${time} on ${plural(pegs, "peg")}`,
    shrunk:
      "Each rate is drawn towards the common one as far as its own fish are few. Pegs differ as well as set-ups, and a rig’s number is the same rig only where all agreed on it.",
  },
  order: {
    label: "In order of",
    peg: "Peg",
    section: "Section",
    weight: "Weight",
  },
  rows: "Pegs",
  section: (section: string) => `Section ${section}`,
  noSection: "No section",
  match:
    "Places go by spoken weights; the scales decide. Equal weights share the mean of their places. Not settled: the limits of another’s weight reach into this one’s.",
  row: {
    who: (peg: string, name: string) => `Peg ${peg}, ${name}`,
    nothing: "Nothing logged yet",
    states: { ready: "Not started", paused: "On a break", ended: "Finished" },
    caught: (fish: number, ago: string) => `${fish} fish, the last ${ago} ago`,
    noFish: "No fish yet",
    asSpoken: (lower: string, upper: string) => `likely ${lower} to ${upper}`,
    atLeast: (lower: string) => `${lower} or more: not every fish has a weight`,
    byScales: "by the scales",
    rates: (now: string, session: string) => `${now} an hour now, ${session} over the session`,
    rate: (session: string) => `${session} an hour over the session`,
    noRate: "Too short to give a rate",
    inSection: (section: string, place: string, of: number) =>
      `Section ${section}: place ${place} of ${of}`,
    overall: (place: string, of: number) => `Overall: place ${place} of ${of}`,
    both: (inSection: string, place: string, of: number) =>
      `${inSection}, overall ${place} of ${of}`,
    notSettled: (ranks: string) => `${ranks} (not settled)`,
    sectionOpen: (ranks: string) => `${ranks} (in the section not settled)`,
    overallOpen: (ranks: string) => `${ranks} (overall not settled)`,
    noWord: (time: string) => `No word for ${time}`,
    gone: (time: string) => `No word for ${time}: its sums end there`,
  },
} as const;

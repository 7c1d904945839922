/** The log as files: kept, moved to another phone, taken in. */
const plural = (count: number, one: string, many = `${one}s`) =>
  `${count} ${count === 1 ? one : many}`;

export const filesWords = {
  title: "Files",
  keep: {
    title: "Keep it",
    about:
      "Some browsers clear away the data of a page that has not been opened for a week: a file stays. For another phone, save the log here and take it in there.",
    extent: "Of what",
    all: "All sessions",
    open: "The open session",
    everything:
      "A file holds everything: waters, pegs, notes and the words that were heard. The log also holds how this phone is set.",
    json: "Save the log as a file",
    events: "Table of events (CSV)",
    fish: "Table of fish (CSV)",
    holds: (outcome: string, name: string, sessions: number, events: number) =>
      `${outcome} ${name}: ${plural(sessions, "session")}, ${plural(events, "record")}.`,
    incomplete: (why: string) => `Only what is not stored yet is in it. ${why}`,
    failed: "The file could not be written. Try again.",
    schema: "What a log file holds, for programs (JSON Schema)",
  },
  takeIn: {
    title: "Take in a log file",
    hint: "A log or a table of events from here or another phone, or a summary sent as a file. What is known already stays as it is.",
    reading: "Reading the file…",
    failed: "The file could not be read. Try again.",
    taken: (added: number, sessions: number) =>
      `${plural(added, "record")} of ${plural(sessions, "session")} taken in.`,
    known: (known: number) =>
      known === 0 ? "" : ` ${plural(known, "record was", "records were")} here already.`,
    allKnown: "All of it was here already.",
    damaged: (damaged: number) =>
      damaged === 0 ? "" : ` ${plural(damaged, "damaged record")} stayed behind in the file.`,
    takenOut: (sessions: number) =>
      `${plural(sessions, "session")} of it you took out here, so ${sessions === 1 ? "it was" : "they were"} left out.`,
    bringBack: "Take them in again",
    settings:
      "The file also holds how the other phone was set: units, warnings and the like. Which ears listen, and whether sound is kept, stays as it is here.",
    useSettings: "Set this phone the same",
    settingsUsed: "This phone is set the same now.",
  },
} as const;

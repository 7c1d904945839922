/** What is answered to an utterance; values come formatted for the ear. */
export const replyWords = {
  notStored: (advice: string) => `Not stored yet. ${advice}`.trim(),
  now: (said: string) => `Now ${said}.`,
  nothing: "nothing",
  faintly: "heard faintly",
  toCheck: "To check.",
  toCheckWhy: (doubts: string) => `To check: ${doubts}.`,
  backTo: (said: string) => `Back to ${said}.`,
  takenBack: "Taken back.",
  takenBackWhat: (said: string) => `Taken back: ${said}.`,
  noSuchFish: (of: number) => `There is no fish ${of}.`,
  nothingToCorrect: "There is nothing to correct.",
  nothingToTakeBack: "There is nothing to take back.",
  notUnderstood: "Not understood.",
  scratched: "scratch that",
} as const;

/** What can be said. */
export const phrasesWords = {
  title: "What you can say",
  about:
    "Say it in your own words, near to these. Several things may go in one breath: “fish, two pounds, ten centimetres shallower, feeding”. Slips are put right by “scratch that” or “make that three pounds”.",
  callWord: (word: string) => `The call word is on: only what starts with “${word}” counts.`,
} as const;

/** Listening again to what was said in doubt. */
export const memoWords = {
  listen: "Hear what was said",
  playing: "Playing …",
  choice: "Keep the sound of what is in doubt",
  what: "What was marked for a look, or not taken, can then be heard again in Review. It stays on this phone, is never sent, and goes as soon as the line is settled. Only the ears inside the app can give it; those of the browser keep the sound to themselves.",
  on: "Keep it",
  off: "Don’t",
} as const;

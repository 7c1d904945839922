/** What a fish was lost by. */
export const causeWords = {
  off: "Came off",
  pulled: "Hook pulled",
  snapped: "Snapped",
  foul: "Foul hooked",
  net: "At the net",
} as const;

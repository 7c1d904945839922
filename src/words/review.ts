/** Going through the session with dry hands. */
export const reviewWords = {
  rightAsItIs: "Right as it is",
  /** Answers to a question, as they are heard. */
  yes: [
    "yes",
    "yes please",
    "yes right",
    "yes that's right",
    "yes it was",
    "yes it is",
    "yeah",
    "yep",
    "right",
    "that's right",
    "right as it is",
    "correct",
    "that's correct",
    "leave it",
    "okay",
    "ok",
  ] as readonly string[],
};

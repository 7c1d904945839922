import type { Paraphrases } from "./group.ts";

/** Questions of what is in the log beside the catch as a whole. */
export const askLog: Paraphrases = [
  {
    means: [{ kind: "ask", what: "count" }],
    said: [
      "how many carp",
      "how many carp so far",
      "how many tench have I had",
      "how many roach is that",
      "how many F1s have I caught today",
      "have I had any bream",
      "have I caught any perch yet",
    ],
  },
  {
    means: [{ kind: "ask", what: "lost" }],
    said: [
      "how many have I lost",
      "how many fish have I lost",
      "how many have I lost so far",
      "how many lost",
      "how many did I lose",
      "how many carp have I lost",
      "how many have come off",
      "have I lost many",
      "number of fish lost",
    ],
  },
  {
    means: [{ kind: "ask", what: "bites" }],
    said: [
      "how many bites have I had",
      "how many bites have I missed",
      "how many have I missed",
      "how many missed",
      "bites so far",
      "how many bites so far",
      "how many bites",
      "number of bites",
    ],
  },
  {
    means: [{ kind: "ask", what: "again" }],
    said: ["repeat that", "repeat the answer", "tell me that again", "repeat that please"],
  },
  {
    means: [{ kind: "ask", what: "last-fish" }],
    said: [
      "what was my last fish",
      "what was the last fish",
      "what was the last one",
      "how big was the last one",
      "what did the last one weigh",
    ],
  },
  {
    means: [{ kind: "ask", what: "biggest" }],
    said: [
      "what's my biggest fish",
      "what's my biggest",
      "what's the biggest so far",
      "biggest fish",
      "what was my biggest fish",
      "what's my best fish",
      "what's the biggest carp",
      "how big was the biggest",
      "what's the heaviest fish today",
      "biggest fish so far",
    ],
  },
  {
    means: [{ kind: "ask", what: "fed" }],
    said: [
      "what have I fed",
      "how much have I fed",
      "how much have I fed so far",
      "how much pellet have I fed",
      "how much bait have I put in",
      "how much bait have I used",
      "when did I last feed",
      "how long since I fed",
      "how long since I last fed",
      "how long ago did I feed",
      "how many times have I fed",
      "time since the last feed",
    ],
  },
  {
    means: [{ kind: "ask", what: "pace" }],
    said: [
      "what do I need",
      "what do I need now",
      "how much more do I need",
      "what do I need an hour",
      "what do I need for my target",
      "how much do I need for the target",
    ],
  },
];

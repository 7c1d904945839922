/** Questions of what stands in the log beside the fish in the net: what was lost, the biggest, the feed. */
import { ask, SO_FAR, WHATS } from "./asked.ts";
import type { Phrase } from "./phrase.ts";

const lost = ask(
  "lost",
  [
    `how many [fish | <species>] (have i lost | have i dropped | did i lose | lost | i've lost | have come off | came off | were lost | have got off | got off | have i snapped on | have i pulled out of | have i had off) [${SO_FAR}]`,
    `[${WHATS}] [my | the] (lost count | losses | number lost | number of fish lost | how many lost) [${SO_FAR}]`,
    `have i lost (any | many | a lot) [${SO_FAR}]`,
  ],
  ["how many have I lost", "how many carp lost", "losses so far", "have I lost many"],
);

const bites = ask(
  "bites",
  [
    `how many (bites | bites and knocks | knocks | liners | missed bites | missed) [have i had | have i missed | did i miss | did i get | i've had | did i have | have there been | was that | is that] [${SO_FAR}]`,
    `how many (have i missed | did i miss) [${SO_FAR}]`,
    `[${WHATS}] (bite count | number of bites | bites so far | missed bites so far)`,
    `have i (had | missed) (any | many) bites [${SO_FAR}]`,
  ],
  [
    "how many bites have I had",
    "how many have I missed",
    "bites so far",
    "have I missed many bites",
  ],
);

const biggest = ask(
  "biggest",
  [
    `(what's | what is | what was | which is | which was | what's been | tell me | how big's | how big is | how big was) [my | the] (biggest | best | largest | heaviest | top) (fish | one | <species> | catch) [${SO_FAR} | of the day | of the session]`,
    `[${WHATS}] [my | the] (biggest | largest | heaviest) [fish | one] [${SO_FAR} | of the day]`,
    "(how big was the biggest | how big's the biggest | best fish | best fish so far | what's my best fish | what's the best fish | what's my biggest)",
  ],
  ["what's my biggest fish", "how big was the biggest carp", "biggest so far", "best fish"],
);

const fed = ask(
  "fed",
  [
    `(what have i | how much have i | how often have i | how many times have i | what did i | how much did i | how much feed have i) (fed | feed | put in | potted in | thrown in) [${SO_FAR}]`,
    `how much (<bait> | feed | bait) (have i fed | did i feed | have i put in | has gone in | went in | have i used | gone in) [${SO_FAR}]`,
    "(when | how long ago | how long since) (did i last feed | did i feed | did i feed last | i fed | i last fed | the last feed | was the last feed | last feed | was my last feed)",
    "(time since the last feed | time since feeding | time since i fed | how long since feeding)",
  ],
  [
    "what have I fed",
    "how much pellet have I fed",
    "when did I last feed",
    "time since the last feed",
  ],
);

export const logQuestions: readonly Phrase[] = [lost, bites, biggest, fed];

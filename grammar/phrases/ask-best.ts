/** Which depth, rig, bait, distance, hook or hour catches best. */
import type { Question } from "../statement.ts";
import { ask, WHATS } from "./asked.ts";
import type { Phrase } from "./phrase.ts";

const best = (
  what: Extract<Question, `best-${string}`>,
  noun: string,
  am: string,
  saidBest: string,
  saidWhich: string,
  saidMost: string,
): Phrase => {
  const nouns = noun.replaceAll(/ \||$/g, (end) => `'s${end}`);
  return ask(
    what,
    [
      `[${WHATS} | what's been | which is | which's | what has been] [the | my] (best | top | most productive) (${noun}) [so far | today | at the moment | now | been | for weight]`,
      `(which | what | which's | what's the) (${noun} | ${nouns}) [is | was | has been | is the | are | has | have] (best | working | working best | catching most | doing best | been best | catching best | the best | catching | been the best | most productive | producing | caught most | caught best | better | catching the most | producing the most | producing the most fish | catching the most fish | catching most fish | caught the most fish | caught the most | fishing best | done best | worked best | doing the best | producing most | been working | been working best) [so far | today | at the moment | now]`,
      `(which | what) (${noun}) (${am}) [by the fish]`,
      `which of the (${noun}s | ${nouns}) is (best | working | working best | performing best | doing best | catching best | catching most)`,
    ],
    [saidBest, saidWhich, saidMost, `which of the ${noun.split(" ")[0]}s is best`],
  );
};

const bestDepth = best(
  "best-depth",
  "depth",
  "should i be at | has been the most productive | should i fish | should i be fishing | should i fish at | am i catching best at | am i catching most at | am i doing best at | are they at | are they feeding at | are the fish at | are they coming at | are they coming at best | are they at best | are they taking at | are they biting at | should i be on | am i catching at | have i caught most at | have i caught best at | did i catch most at",
  "best depth",
  "which depth is best",
  "what depth should I fish",
);
const bestRig = best(
  "best-rig",
  "rig",
  "should i be on | should i use | should i fish | should i be using | am i catching most on | am i catching best on | am i doing best on | have i caught most on | have i caught best on | did i catch most on | should i go on | should i pick up | caught most on",
  "best rig",
  "which rig is best",
  "which rig am I catching most on",
);
const bestBait = best(
  "best-bait",
  "bait | hook bait | hookbait",
  "should i be on | should i use | should i fish | should i be using | am i catching most on | am i catching best on | am i doing best on | have i caught most on | have i caught best on | did i catch most on | should i go on | do they want | are they taking best | are they taking | are they on | are they having | should i try | caught most on",
  "best bait",
  "which bait is best",
  "which bait should I use",
);
const bestDistance = best(
  "best-distance",
  "distance | range | line",
  "should i be at | should i fish | should i be fishing | should i fish at | am i catching best at | am i catching most at | am i doing best at | have i caught most at | have i caught best at | did i catch most at | are they at | are they feeding at",
  "best distance",
  "which distance is best",
  "what distance should I fish",
);
const bestHook = best(
  "best-hook",
  "hook | hook size | size of hook | size hook",
  "should i be on | should i use | should i fish | should i be using | am i catching most on | am i catching best on | am i doing best on | have i caught most on | have i caught best on | did i catch most on | should i go to | should i tie on",
  "best hook",
  "which hook is best",
  "what hook should I use",
);
const bestHour = best(
  "best-hour",
  "hour | time",
  "did i catch most in | did i do best in | have i caught most in | have i caught best in | did they feed in",
  "best hour",
  "which hour was best",
  "which hour did I catch most in",
);

export const bestQuestions: readonly Phrase[] = [
  bestDepth,
  bestRig,
  bestBait,
  bestDistance,
  bestHook,
  bestHour,
];

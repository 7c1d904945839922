/** What stands in the log beside the catch as a whole: what was lost, the biggest fish, the feed. */
import type { BaitUse } from "../../analysis/rules/bait.ts";
import { summarise } from "../../share/summary.ts";
import { answerWords as say } from "../../words/answers.ts";
import { type Asking, same, type Words } from "./asking.ts";
import {
  count,
  fishWords,
  list,
  sentence,
  sizedFishWords,
  timeWords,
  type Units,
  weightWords,
} from "./words.ts";

export function lost({ session, now }: Asking): Words {
  const { losses } = summarise(session, now);
  const all = losses.reduce((total, { count: more }) => total + more, 0);
  if (all === 0) return same(say.noneLost);
  const causes = losses.map(({ value, count: fish }) => `${fish} ${say.lostBy[value]}`);
  return { short: say.lost(fishWords(all)), full: say.lostHow(fishWords(all), list(causes)) };
}

export function bites({ session, now }: Asking): Words {
  const { signs } = summarise(session, now);
  if (signs.length === 0) return same(say.noBites);
  return same(say.bites(list(signs.map(({ value, count: times }) => say.signs[value](times)))));
}

/** The heaviest that was given a weight, else the longest that was measured. */
export function biggest({ session, now, units }: Asking): Words {
  if (session.count === 0) return same(say.noFish);
  const { best, unweighed } = summarise(session, now);
  if (!best) return same(say.noneSized);
  const short = `${sentence(sizedFishWords(best, units))}.`;
  return { short, full: unweighed === 0 ? short : `${short}${say.othersNotWeighed(unweighed)}` };
}

export function fed({ session, sums, now, units }: Asking): Words {
  const { baits, fedAt } = sums;
  if (fedAt === undefined) return same(say.notFed);
  const short = say.lastFed(sentence(timeWords(Math.max(0, (session.endedAt ?? now) - fedAt))));
  const used = [...baits].map(([bait, use]) => `${useWords(use, units)} ${bait}`);
  return { short, full: used.length === 0 ? short : `${short}${say.fed(list(used))}` };
}

/** "300 grams of", "5 times", "300 grams and 2 times more of": feed without a weight named is counted. */
function useWords({ grams, unweighed }: BaitUse, units: Units): string {
  const weight = grams > 0 ? weightWords(grams, { ...units, weight: "kg" }) : "";
  if (unweighed === 0) return say.weightOf(weight);
  const times = count(unweighed, "time");
  return weight ? say.weightAndTimesOf(weight, times) : times;
}

/** Where to start today, and why, by what earlier sessions say. */
import type { Contender } from "../../analysis/best.ts";
import type { SeasonBest, SeasonContender } from "../../analysis/seasons/over-sessions.ts";
import { type Start, startAt } from "../../analysis/seasons/start.ts";
import { MS_PER_HOUR } from "../../analysis/units.ts";
import { answerWords as say } from "../../words/answers.ts";
import { type Asking, same, type Words } from "./asking.ts";
import { levelName } from "./best.ts";
import {
  count,
  list,
  oddsWords,
  rateRange,
  rateWords,
  sentence,
  timeWords,
  type Units,
} from "./words.ts";

/** More than two names are not worth telling apart by ear. */
const MOST_ALIKE = 2;

export function start({ session, past, units }: Asking): Words {
  const earlier = past.filter(({ id }) => id !== session.id);
  if (earlier.length === 0) return same(say.noEarlier);
  const advice = startAt(session.plan.water ?? undefined, earlier);
  const { depth, sessions, hours } = advice;
  const [leader] = depth.ranked;
  if (!leader || depth.verdict === "too-few")
    return same(say.tooFewEarlier(count(sessions, "session"), hoursWords(hours)));
  const short = depthLine(advice, leader, units);
  const sure = say.beatsAll(oddsWords(leader.chanceBest), depth.ranked.length).trim();
  return {
    short,
    full: `${short}${withRig(advice, units)}`,
    ...(depth.ranked.length > 1 && { sure }),
  };
}

const hoursWords = (hours: number): string => timeWords(hours * MS_PER_HOUR);

function depthLine(advice: Start, leader: SeasonContender, units: Units) {
  const { depth, hours, sessions } = advice;
  const where = whereFrom(advice);
  const name = (one: Contender) => levelName("depth", one.level, units);
  if (depth.verdict === "close") {
    const names = list(depth.ranked.slice(0, MOST_ALIKE).map(name));
    return say.startUnclear(names, hoursWords(hours), count(sessions, "session"), where);
  }
  const { fishPerHour, fish } = leader;
  const rate = fishPerHour.tells ? fishPerHour.value : fish / leader.hours;
  return say.startAt(
    name(leader),
    rateWords(rate),
    rateRange(fishPerHour),
    hoursWords(leader.hours),
    count(leader.sessions, "session"),
    where,
  );
}

const whereFrom = ({ water }: Start): string =>
  water === undefined ? say.allWaters : say.atWater(water);

/** The rig and the bait, where one of them stands out. */
function withRig({ rig, bait }: Start, units: Units): string {
  const clear = ({ verdict, ranked: [leader] }: SeasonBest, factor: "rig" | "bait") =>
    verdict === "clear" && leader ? [levelName(factor, leader.level, units)] : [];
  const names = [...clear(rig, "rig"), ...clear(bait, "bait")];
  return names.length === 0 ? "" : say.startWith(sentence(list(names)));
}

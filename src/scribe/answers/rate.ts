/** How fast they come, now and over the session; few fish are said to be few. */
import { fishedStretches, lengthOf } from "../../analysis/effort/stretches.ts";
import { FEWEST_EVENTS } from "../../analysis/estimate.ts";
import { currentRate, WINDOW_MS } from "../../analysis/rate.ts";
import { MS_PER_HOUR } from "../../analysis/units.ts";
import { answerWords as say } from "../../words/answers.ts";
import { type Asking, NOT_STARTED, same, type Words } from "./asking.ts";
import { fishWords, oddsWords, rateRange, rateWords, timeWords } from "./words.ts";

export function rate({ session, now }: Asking): Words {
  const ms = lengthOf(fishedStretches(session, now));
  if (session.startedAt === undefined || ms <= 0) return NOT_STARTED;
  const { count } = session;
  const [fish, time] = [fishWords(count), timeWords(ms)];
  if (count < FEWEST_EVENTS) return same(say.tooFewForRate(fish, time));
  const { session: whole, recentFish, verdict, chanceFaster } = currentRate(session, now);
  const perHour = rateWords((count * MS_PER_HOUR) / ms);
  const range = rateRange(whole);
  const restsOn = say.rateRestsOn(fish, time, range);
  const sure = say.rateSure(range);
  const short = say.perHour(perHour);
  if (ms <= WINDOW_MS) return { short, full: `${short} ${restsOn}`, sure };
  const change = verdict === "faster" || verdict === "slower" ? say[verdict] : "";
  const late = `${say.perHourLate(perHour, rateWords((recentFish * MS_PER_HOUR) / WINDOW_MS))}${change}`;
  return {
    short: late,
    full: `${late} ${restsOn}`,
    sure: `${sure}${verdict === "too-few" ? "" : say.fasterOdds(oddsWords(chanceFaster))}`,
  };
}

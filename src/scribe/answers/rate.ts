/** How fast they come, now and over the session; few fish are said to be few. */
import { fishedStretches, fishedUpTo, lengthOf } from "../../analysis/effort/stretches.ts";
import { FEWEST_EVENTS } from "../../analysis/estimate.ts";
import { currentRate, WINDOW_MS } from "../../analysis/rate.ts";
import { MS_PER_HOUR } from "../../analysis/units.ts";
import type { Session } from "../../log/session.ts";
import { type Asking, same, type Words } from "./asking.ts";
import { fishWords, rateWords, timeWords } from "./words.ts";

const VERDICTS = { faster: " Faster than before.", slower: " Slower than before." };

export function rate({ session, now }: Asking): Words {
  const stretches = fishedStretches(session, now);
  const ms = lengthOf(stretches);
  if (ms === 0) return same("The session has not started.");
  const whole = `${fishWords(session.count)} in ${timeWords(ms)}`;
  if (session.count < FEWEST_EVENTS) return same(`${whole}: too few for a rate.`);
  const perHour = `${rateWords((session.count * MS_PER_HOUR) / ms)} fish an hour`;
  if (ms <= WINDOW_MS) return { short: `${perHour}.`, full: `${perHour}: ${whole}.` };
  const late = recentFish(session, now, ms - WINDOW_MS);
  const { verdict } = currentRate(session, now);
  const change = verdict === "faster" || verdict === "slower" ? VERDICTS[verdict] : "";
  const text = `${perHour}, ${late} in the last half hour.${change}`;
  return { short: text, full: `${text} ${whole} in all.` };
}

/** Fish taken after so many milliseconds fished. */
function recentFish(session: Session, now: number, afterMs: number): number {
  const stretches = fishedStretches(session, now);
  return session.entries.reduce((sum, { statement, at }) => {
    const counts = statement.kind === "fish" && fishedUpTo(stretches, at) > afterMs;
    return counts ? sum + (statement.count ?? 1) : sum;
  }, 0);
}

/** Which level of a factor catches best, with what that rests on; few fish are said to be few. */
import { changeParts } from "../../../grammar/saying/change.ts";
import { type Best, bestIn, type Contender } from "../../analysis/best.ts";
import type { Factor } from "../../analysis/effort/exposure.ts";
import { MS_PER_HOUR } from "../../analysis/units.ts";
import { answerWords as say } from "../../words/answers.ts";
import { type Asking, NOT_STARTED, same, type Words } from "./asking.ts";
import type { Units } from "./words.ts";
import {
  depthWords,
  fishWords,
  list,
  oddsWords,
  rateRange,
  rateWords,
  sentence,
  timeWords,
} from "./words.ts";

/** More is not remembered from hearing it once. */
const MOST_NAMED = 3;

/** Shorter than this without a fish, a level was only passed through. */
const A_WHILE_MS = 60_000;

export function best(factor: Factor, { session, now, units }: Asking): Words {
  if (session.startedAt === undefined) return NOT_STARTED;
  const { verdict, ranked } = bestIn(factor, session, now);
  const [leader] = ranked;
  if (!leader) return same(say.noneNamed(factor));
  const lines = ranked
    .filter(
      ({ fish, hours }, place) => place === 0 || fish > 0 || hours * MS_PER_HOUR >= A_WHILE_MS,
    )
    .slice(0, MOST_NAMED)
    .map((one) => evidence(factor, one, units));
  const name = (one: Contender) => levelName(factor, one.level, units);
  switch (verdict) {
    case "clear":
      return clear(ranked, name, lines);
    case "close":
      return unclear(ranked, name, lines);
    case "alone":
      return same(say.only(name(leader), lines.join()));
    case "too-few":
      return same(say.tooFew(list(lines)));
  }
}

type Naming = (one: Contender) => string;

function clear(ranked: Best["ranked"], name: Naming, lines: readonly string[]): Words {
  const [leader, second, ...others] = ranked;
  if (!leader || !second) return same("");
  const odds = oddsWords(leader.chanceBest);
  const sure =
    others.length === 0 ? say.beats(odds, name(second)) : say.beatsAll(odds, ranked.length);
  const short = `${rateLine(leader, name, say.leads)}${sure}`;
  return { short, full: `${short}${say.restsOn(sentence(list(lines)))}`, sure: sure.trim() };
}

/** All that were tried are near each other: the first two, in short. */
function unclear(ranked: Best["ranked"], name: Naming, lines: readonly string[]): Words {
  const [first] = ranked;
  if (!first) return same("");
  const [told, alsoTold] = ranked.filter(({ fishPerHour }) => fishPerHour.tells);
  const text = [
    say.noClearBest,
    ...(told ? [rateLine(told, name, say.leads)] : []),
    ...(alsoTold ? [rateLine(alsoTold, name, say.follows)] : []),
    ...(first.fishPerHour.tells ? [] : [promise(first, name)]),
  ].join(" ");
  const sure = say.beatsAll(oddsWords(first.chanceBest), ranked.length).trim();
  return {
    short: text,
    full: `${text}${say.restsOn(sentence(list(lines)))}`,
    sure: `${sentence(name(first))}: ${sure}`,
  };
}

/** What leads by a few lucky fish is worth another try, and no more. */
const promise = (one: Contender, name: Naming): string =>
  say.promising(sentence(name(one)), fishWords(one.fish), timeWords(one.hours * MS_PER_HOUR));

const rateLine = (
  one: Contender,
  name: Naming,
  line: (name: string, rate: string, range: string) => string,
): string => {
  const { fishPerHour, fish, hours } = one;
  const rate = rateWords(hours > 0 ? fish / hours : 0);
  return line(sentence(name(one)), rate, rateRange(fishPerHour));
};

function evidence(factor: Factor, one: Contender, units: Units): string {
  const name = levelName(factor, one.level, units);
  return say.evidence(fishWords(one.fish), WHERE[factor](name), timeWords(one.hours * MS_PER_HOUR));
}

const WHERE: Readonly<Record<Factor, (name: string) => string>> = {
  depth: say.at,
  distance: say.at,
  rig: say.on,
  bait: say.on,
  hook: say.on,
  hour: say.inHour,
};

export function levelName(factor: Factor, level: string | number, units: Units): string {
  if (factor === "depth") return depthWords(Number(level), units);
  if (factor === "distance") return depthWords(Number(level), { ...units, length: "cm" });
  if (factor === "rig") return changeParts({ rig: String(level) }).join();
  if (factor === "hook") return say.hook(String(level));
  return factor === "hour" ? say.hour(String(level)) : String(level);
}

/** Which depth, rig or bait catches best, with what that rests on; few fish are said to be few. */
import { changeParts } from "../../../grammar/saying/change.ts";
import { type BestVerdict, bestIn, type Contender } from "../../analysis/best.ts";
import { MS_PER_HOUR } from "../../analysis/units.ts";
import { type Asking, same, type Words } from "./asking.ts";
import { fishWords, lengthWords, list, sentence, timeWords, type Units } from "./words.ts";

export type BestOf = "depth" | "rig" | "bait";

/** More is not remembered from hearing it once. */
const MOST_NAMED = 3;

export function best(factor: BestOf, { session, now, units }: Asking): Words {
  if (session.startedAt === undefined) return same("The session has not started.");
  const { verdict, ranked } = bestIn(factor, session, now);
  const [leader] = ranked;
  if (!leader) return same(`Too few to tell: no ${factor} has been fished by name.`);
  const name = nameOf(factor, leader.level, units);
  const lines = ranked.slice(0, MOST_NAMED).map((one) => evidence(factor, one, units));
  const short = sentence(`${HEADS[verdict](name)}: ${list(lines)}.`);
  if (verdict !== "clear") return same(short);
  const sure = Math.min(99, Math.round(100 * leader.chanceBest));
  return { short, full: `${short} ${sure} in 100 that it is the best of them.` };
}

const HEADS: Readonly<Record<BestVerdict, (name: string) => string>> = {
  clear: (name) => `${name} is best`,
  close: () => "No clear best",
  alone: (name) => `Only ${name} so far`,
  "too-few": () => "Too few to tell",
};

function evidence(factor: BestOf, { level, fish, hours }: Contender, units: Units): string {
  const where = `${factor === "depth" ? "at" : "on"} ${nameOf(factor, level, units)}`;
  return `${fishWords(fish)} ${where} in ${timeWords(hours * MS_PER_HOUR)}`;
}

function nameOf(factor: BestOf, level: string | number, units: Units): string {
  if (factor === "depth") return lengthWords(Number(level), units);
  return factor === "rig" ? changeParts({ rig: String(level) }).join() : String(level);
}

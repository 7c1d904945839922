/** The spoken questions, one answer each. */
import type { Question } from "../../../grammar/statement.ts";
import { answerWords as say } from "../../words/answers.ts";
import { type Asking, hasOwnAnswer, type OwnQuestion, same, type Words } from "./asking.ts";
import { best } from "./best.ts";
import { biggest, bites, fed, lost } from "./log.ts";
import { pace } from "./pace.ts";
import { rate } from "./rate.ts";
import { countOf, lastFish, net, setUp, timeLeft, total } from "./standing.ts";
import { start } from "./start.ts";
import { biteDepth, biteTime, mood } from "./water.ts";
import { count } from "./words.ts";

const ANSWERS: Readonly<Record<OwnQuestion, (asking: Asking) => Words>> = {
  total,
  count: countOf,
  lost,
  bites,
  biggest,
  fed,
  "last-fish": lastFish,
  rate,
  "best-depth": (asking) => best("depth", asking),
  "best-rig": (asking) => best("rig", asking),
  "best-bait": (asking) => best("bait", asking),
  "best-distance": (asking) => best("distance", asking),
  "best-hook": (asking) => best("hook", asking),
  "best-hour": (asking) => best("hour", asking),
  start,
  "bite-depth": biteDepth,
  "bite-time": biteTime,
  mood,
  net,
  pace,
  "time-left": timeLeft,
  "set-up": setUp,
};

/** How sure the answer before was; of the weight, where nothing was asked before. */
function sure(asking: Asking): Words {
  const { before = "total", session } = asking;
  const told = ANSWERS[before](asking).sure;
  if (told !== undefined) return same(told);
  const open = session.entries.filter(({ verdict }) => verdict === "check").length;
  const check = open === 0 ? "" : say.stillToCheck(count(open, "entry", "entries"));
  return same(`${say.counted}${check}`);
}

export function answer(what: Question, asking: Asking): Words {
  if (what === "sure") return sure(asking);
  return ANSWERS[hasOwnAnswer(what) ? what : (asking.before ?? "total")](asking);
}

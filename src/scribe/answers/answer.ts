/** The spoken questions, one answer each. */
import type { Question } from "../../../grammar/statement.ts";
import type { Asking, Words } from "./asking.ts";
import { best } from "./best.ts";
import { pace } from "./pace.ts";
import { rate } from "./rate.ts";
import { countOf, lastFish, net, setUp, timeLeft, total } from "./standing.ts";

const ANSWERS: Readonly<Record<Question, (asking: Asking) => Words>> = {
  total,
  count: countOf,
  "last-fish": lastFish,
  rate,
  "best-depth": (asking) => best("depth", asking),
  "best-rig": (asking) => best("rig", asking),
  "best-bait": (asking) => best("bait", asking),
  net,
  pace,
  "time-left": timeLeft,
  "set-up": setUp,
};

export const answer = (what: Question, asking: Asking): Words => ANSWERS[what](asking);

/** Phrases no two of which are alike, each of which the app logs without a doubt. */
import { createReader } from "../../../grammar/read.ts";
import { isEntryStatement } from "../../../src/log/event.ts";
import { judge } from "../../../src/scribe/judge.ts";
import type { Random } from "../../simulation/random.ts";

export interface Phrase {
  text: string;
  /** How many events it is written as, all of them or none. */
  events: number;
}

/** As sure as a recogniser is of a clear sentence. */
export const CONFIDENCE = 0.9;

const SPECIES = [
  ...["F1", "carp", "crucian", "bream", "skimmer", "roach", "rudd", "tench", "perch", "ide"],
  ...["chub", "barbel", "hybrid"],
];
const BAITS = ["", " on corn", " on maggots", " on pellet"];
const MOST_OUNCES = 40;

/** @throws if there are not so many */
export function phrases(count: number, random: Random): Phrase[] {
  const all = SPECIES.flatMap((species) =>
    BAITS.flatMap((bait) =>
      Array.from({ length: MOST_OUNCES }, (_, n) => `${species} ${weight(n + 1)}${bait}`),
    ),
  );
  const reader = createReader({ own: {} });
  const chosen: Phrase[] = [];
  while (chosen.length < count) {
    const at = Math.floor(random.between(0, all.length));
    const [text] = all.splice(at, 1);
    if (text === undefined) throw new Error("There are not so many phrases.");
    const reading = reader.read([text]);
    if (judge(reading, CONFIDENCE) !== "log") continue;
    chosen.push({ text, events: reading.statements.filter(isEntryStatement).length });
  }
  return chosen;
}

function weight(ounces: number): string {
  const [pounds, left] = [Math.floor(ounces / 16), ounces % 16];
  return [amount(pounds, "pound"), amount(left, "ounce")].filter(Boolean).join(" ");
}

const amount = (count: number, unit: string) =>
  count === 0 ? "" : `${count} ${unit}${count === 1 ? "" : "s"}`;

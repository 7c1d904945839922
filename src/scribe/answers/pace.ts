/** Where the bag is heading, and what the target still asks for. */
import { type Needed, paceOf } from "../../analysis/pace.ts";
import { biasFrom, weighedNets } from "../../analysis/weights/bias.ts";
import { type Asking, same, type Words } from "./asking.ts";
import { total } from "./standing.ts";
import { rateWords, type Units, weightWords } from "./words.ts";

export function pace(asking: Asking): Words {
  const { session, now, units } = asking;
  if (session.startedAt === undefined) return same("The session has not started.");
  if (session.state === "ended") return same(`The session has ended. ${total(asking).short}`);
  if (typeof session.plan.endsAt !== "number")
    return same(`No end time is set, so no pace. ${total(asking).short}`);
  const { final, needed } = paceOf(session, now, biasFrom(weighedNets([session])));
  const target = needed ? ` ${targetWords(needed, units)}` : "";
  if (!final.tells) return same(`Too few fish with a weight to tell.${target}`);
  const short = `Heading for ${weightWords(final.value, units)}.${target}`;
  const limits = `${weightWords(final.lower, units)} and ${weightWords(final.upper, units)}`;
  return {
    short,
    full: `Heading for ${weightWords(final.value, units)}, likely between ${limits}.${target}`,
  };
}

function targetWords({ gramsPerHour, fishPerHour, chance }: Needed, units: Units): string {
  if (gramsPerHour === 0) return "The target is reached.";
  if (!Number.isFinite(gramsPerHour)) return "The target was missed.";
  const fish = fishPerHour === undefined ? "" : `, about ${rateWords(fishPerHour)} fish`;
  const odds = chance === undefined ? "" : ` Chance about ${Math.round(100 * chance)} in 100.`;
  return `The target needs ${weightWords(gramsPerHour, units)} an hour${fish}.${odds}`;
}

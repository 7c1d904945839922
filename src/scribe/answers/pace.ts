/** Where the bag is heading, and what the target still asks for. */
import { type Needed, paceOf } from "../../analysis/pace.ts";
import { answerWords as say } from "../../words/answers.ts";
import { type Asking, NOT_STARTED, same, type Words } from "./asking.ts";
import { total } from "./standing.ts";
import { oddsWords, rateWords, roughWeightWords, type Units } from "./words.ts";

export function pace(asking: Asking): Words {
  const { session, sums, now, units } = asking;
  if (session.startedAt === undefined) return NOT_STARTED;
  if (session.state === "ended") return same(say.ended(total(asking).short));
  if (typeof session.plan.endsAt !== "number") return same(say.noPace(total(asking).short));
  const { final, needed } = paceOf(session, now, asking.bias, sums);
  const target = needed ? ` ${targetWords(needed, units)}` : "";
  if (!final.tells) return same(`${say.tooFewForPace}${target}`);
  const [weight, lower, upper] = [final.value, final.lower, final.upper].map((grams) =>
    roughWeightWords(grams, units),
  ) as [string, string, string];
  return {
    short: `${say.heading(weight)}${target}`,
    full: `${say.headingBetween(weight, lower, upper)}${target}`,
    sure: say.paceSure(lower, upper),
  };
}

function targetWords({ gramsPerHour, fishPerHour, chance }: Needed, units: Units): string {
  if (gramsPerHour === 0) return say.targetReached;
  if (!Number.isFinite(gramsPerHour)) return say.targetMissed;
  const fish = fishPerHour === undefined ? "" : say.aboutFish(rateWords(fishPerHour));
  const odds = chance === undefined ? "" : say.odds(oddsWords(chance));
  return say.targetNeeds(roughWeightWords(gramsPerHour, units), fish, odds);
}

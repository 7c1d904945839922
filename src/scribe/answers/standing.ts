/** How it stands: weight, fish, nets, time and tackle, as they follow from the log alone. */
import { changeParts } from "../../../grammar/saying/change.ts";
import { sayName } from "../../../grammar/saying/fish.ts";
import type { StatementOf } from "../../../grammar/statement.ts";
import type { Bias } from "../../analysis/weights/bias.ts";
import { netRisks } from "../../analysis/weights/nets.ts";
import { massEstimate, massOf } from "../../analysis/weights/total.ts";
import type { Entry } from "../../log/session.ts";
import { bySpecies } from "../../share/summary.ts";
import { answerWords as say } from "../../words/answers.ts";
import { NET_RISKS } from "../warnings.ts";
import { type Asking, NOT_STARTED, same, type Words } from "./asking.ts";
import {
  count as counted,
  depthWords,
  fishWords,
  lengthWords,
  list,
  oddsWords,
  roughWeightWords,
  sentence,
  sizedFishWords,
  timeWords,
  weightWords,
} from "./words.ts";

export function total(asking: Asking): Words {
  const { session, units } = asking;
  const { count, unweighed, spokenG } = session;
  if (count === 0) return same(say.nothingYet);
  if (unweighed === count) return same(say.noWeights(fishWords(count)));
  const weight = weightWords(spokenG, units);
  const text =
    unweighed === 0
      ? say.total(weight, fishWords(count))
      : say.totalPart(weight, unweighed, fishWords(count));
  return { ...same(text), sure: totalSure(asking) };
}

/** What the scales would say, and what that rests on. */
function totalSure(asking: Asking): string {
  const { sums, units, bias } = asking;
  const { lower, upper } = massEstimate(massOf(sums.loads, bias));
  const likely = Number.isFinite(upper)
    ? say.scalesLikely(roughWeightWords(lower, units), roughWeightWords(upper, units))
    : say.scalesAtLeast(roughWeightWords(lower, units));
  return `${likely} ${biasWords(bias)}`;
}

/** Two nets could agree by luck, and an angler within this share is as right as scales on a bank. */
const FEWEST_NETS = 3;
const RIGHT_WITHIN = 0.02;

function biasWords({ belief, nets }: Bias): string {
  if (nets === 0) return say.noNetWeighed;
  const weighed = counted(nets, "net");
  if (nets < FEWEST_NETS) return say.fewNetsWeighed(weighed);
  const off = Math.exp(belief.mean) - 1;
  if (Math.abs(off) < RIGHT_WITHIN) return say.spokenRight(weighed);
  const percent = Math.round(100 * Math.abs(off));
  return off > 0 ? say.spokenLow(percent, weighed) : say.spokenHigh(percent, weighed);
}

export function countOf({ session }: Asking): Words {
  if (session.count === 0) return same(say.noFish);
  const kinds = bySpecies(session.entries).map(({ species, count }) =>
    species === undefined ? `${count} ${say.notNamed}` : `${count} ${sayName(species)}`,
  );
  const fish = fishWords(session.count);
  return { short: say.count(fish), full: say.countByKind(fish, list(kinds)) };
}

const isFish = (entry: Entry): entry is Entry & { statement: StatementOf<"fish"> } =>
  entry.statement.kind === "fish";

export function lastFish({ session, now, units }: Asking): Words {
  const { lastFishAt, startedAt, endedAt } = session;
  if (startedAt === undefined) return NOT_STARTED;
  const until = endedAt ?? now;
  const since = timeWords(Math.max(0, until - (lastFishAt ?? startedAt)));
  const last = session.entries.findLast(isFish)?.statement;
  return same(
    last ? say.sinceLast(sentence(since), sizedFishWords(last, units)) : say.noFishAfter(since),
  );
}

export function net(asking: Asking): Words {
  const { session, units } = asking;
  const { number, spokenG, count, unweighed } =
    session.nets.find((one) => one.number === session.net) ?? noNet(session.net);
  const limitG = session.plan.netLimitG;
  const missing = unweighed === 0 ? "" : say.withoutWeight(unweighed, fishWords(count));
  const weight = weightWords(spokenG, units);
  if (typeof limitG !== "number")
    return {
      ...same(`${say.net(number, weight, fishWords(count))}${missing}`),
      sure: say.netNoLimit,
    };
  const room = weightWords(Math.abs(limitG - spokenG), units);
  const where = spokenG > limitG ? say.over(room) : say.room(room);
  return {
    short: `${say.netRoom(number, weight, where)}${missing}`,
    full: `${say.netRoomOf(number, weight, weightWords(limitG, units), where)}${missing}`,
    sure: netSure(asking, number),
  };
}

const noNet = (number: number) => ({ number, spokenG: 0, count: 0, unweighed: 0 });

function netSure(asking: Asking, number: number): string {
  const risks = netRisks(asking.session, asking.bias, NET_RISKS.usual, asking.sums);
  const { chanceOver = 0, chanceAfterNext = 0 } = risks.find((one) => one.net === number) ?? {};
  return say.netOdds(oddsWords(chanceOver), oddsWords(chanceAfterNext));
}

export function timeLeft({ session, now }: Asking): Words {
  const { startsAt, endsAt } = session.plan;
  if (session.state === "ended") return same(say.ended("").trim());
  if (session.state === "ready" && typeof startsAt === "number" && now < startsAt)
    return same(say.startsIn(timeWords(startsAt - now)));
  if (typeof endsAt !== "number") return same(say.noEnd);
  if (now >= endsAt) return same(say.timeUp(timeWords(now - endsAt)));
  return same(say.timeLeft(timeWords(endsAt - now)));
}

export function setUp({ session, units }: Asking): Words {
  const { rig, depthMm, distanceMm, hook, bait, baitNote, lashMm } = session.setUp;
  const parts = [
    ...changeParts({ ...(rig !== undefined && { rig }) }),
    depthMm === undefined ? "" : say.depth(depthWords(depthMm, units)),
    ...changeParts({ ...(distanceMm !== undefined && { distanceMm }), unit: { length: "m" } }),
    ...changeParts({ ...(hook !== undefined && { hook }) }),
    ...changeParts({ ...(bait !== undefined && { bait }), ...(baitNote && { baitNote }) }),
    lashMm === undefined ? "" : say.lash(lengthWords(lashMm, units)),
  ].filter(Boolean);
  return same(parts.length === 0 ? say.noSetUp : say.setUp(sentence(parts.join(", "))));
}

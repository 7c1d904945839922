/** How it stands: weight, fish, nets, time and tackle, as they follow from the log alone. */
import { changeParts } from "../../../grammar/saying/change.ts";
import { sayName } from "../../../grammar/saying/fish.ts";
import { bySpecies } from "../../share/summary.ts";
import { type Asking, same, type Words } from "./asking.ts";
import { fishWords, lengthWords, list, sentence, timeWords, weightWords } from "./words.ts";

export function total({ session, units }: Asking): Words {
  const { count, unweighed, spokenG } = session;
  if (count === 0) return same("Nothing yet.");
  if (unweighed === count) return same(`${fishWords(count)}, none with a weight.`);
  const weight = weightWords(spokenG, units);
  if (unweighed === 0) return same(`${weight} from ${fishWords(count)}.`);
  return same(`${weight}, and ${unweighed} of ${fishWords(count)} without a weight.`);
}

export function countOf({ session }: Asking): Words {
  if (session.count === 0) return same("No fish yet.");
  const short = `${fishWords(session.count)}.`;
  const kinds = bySpecies(session.entries).map(({ species, count }) =>
    species === undefined ? `${count} not named` : `${count} ${sayName(species)}`,
  );
  return { short, full: `${fishWords(session.count)}: ${list(kinds)}.` };
}

export function lastFish({ session, now }: Asking): Words {
  const { lastFishAt, startedAt, endedAt } = session;
  if (startedAt === undefined) return same("The session has not started.");
  const until = endedAt ?? now;
  if (lastFishAt === undefined) return same(`No fish yet, after ${timeWords(until - startedAt)}.`);
  return same(`${timeWords(Math.max(0, until - lastFishAt))} since the last fish.`);
}

export function net({ session, units }: Asking): Words {
  const { number, spokenG, count, unweighed } =
    session.nets.find((one) => one.number === session.net) ?? noNet(session.net);
  const limitG = session.plan.netLimitG;
  const missing = unweighed === 0 ? "" : ` ${unweighed} of ${fishWords(count)} without a weight.`;
  const weight = `Net ${number}: ${weightWords(spokenG, units)}`;
  if (typeof limitG !== "number") return same(`${weight} from ${fishWords(count)}.${missing}`);
  const room = weightWords(Math.abs(limitG - spokenG), units);
  const limit = weightWords(limitG, units);
  const where = spokenG > limitG ? `${room} over the limit` : `room for ${room}`;
  return {
    short: `${weight}, ${where}.${missing}`,
    full: `${weight} of ${limit}, ${where}.${missing}`,
  };
}

const noNet = (number: number) => ({ number, spokenG: 0, count: 0, unweighed: 0 });

export function timeLeft({ session, now }: Asking): Words {
  const { endsAt } = session.plan;
  if (session.state === "ended") return same("The session has ended.");
  if (typeof endsAt !== "number") return same("No end time is set.");
  if (now >= endsAt) return same(`Time was up ${timeWords(now - endsAt)} ago.`);
  return same(`${timeWords(endsAt - now)} left.`);
}

export function setUp({ session, units }: Asking): Words {
  const { rig, depthMm, distanceMm, hook, bait, baitNote, lashMm } = session.setUp;
  const parts = [
    ...changeParts({ ...(rig !== undefined && { rig }) }),
    depthMm === undefined ? "" : `depth ${lengthWords(depthMm, units)}`,
    ...changeParts({ ...(distanceMm !== undefined && { distanceMm }), unit: { length: "m" } }),
    ...changeParts({ ...(hook !== undefined && { hook }) }),
    ...changeParts({ ...(bait !== undefined && { bait }), ...(baitNote && { baitNote }) }),
    lashMm === undefined ? "" : `${lengthWords(lashMm, units)} of line above the float`,
  ].filter(Boolean);
  return same(parts.length === 0 ? "No set-up has been named." : `${sentence(parts.join(", "))}.`);
}

/** What must be said before it is too late: limits near or passed, time running out, a pace that turned. */
import { type Breach, breachesOf } from "../analysis/rules/breaches.ts";
import type { Running } from "../analysis/running.ts";
import { floating } from "../analysis/shotting/floating.ts";
import { MS_PER_MINUTE } from "../analysis/units.ts";
import type { Bias } from "../analysis/weights/bias.ts";
import type { Session } from "../log/session.ts";
import { warningWords as say } from "../words/warnings.ts";
import {
  count,
  lengthWords,
  sentence,
  timeWords,
  type Units,
  waitWords,
  weightWords,
} from "./answers/words.ts";
import { NET_RISKS, type Warnings } from "./warnings.ts";

export const TIME_NEAR_MS = 10 * MS_PER_MINUTE;
/** Sums of ounces fall short of whole pounds by less than this, in grams. */
const ROUNDING_G = 0.01;

/** Sentences by what they are about: one that is new since the last look is to be spoken. */
export type Alarms = ReadonlyMap<string, string>;

type Rows = (readonly [about: string, sentence: string])[];

/** What there is to look at. */
export interface Sight {
  session: Session;
  sums: Running;
  bias: Bias;
  /** Milliseconds since the epoch. */
  now: number;
  units: Units;
  warnings: Warnings;
}

/** All but time and pace, which alone change while nothing is written. */
export function limitAlarms(sight: Sight): Alarms {
  const { session, sums, bias, now, warnings } = sight;
  const risk = warnings.nets === "off" ? 1 : NET_RISKS[warnings.nets];
  const breaches = breachesOf(session, now, bias, risk, sums);
  return new Map([
    ...nets(sight, breaches),
    ...(warnings.rules ? [...breaches.flatMap((one) => broken(one, sight)), ...bait(sight)] : []),
    ...(warnings.float ? float(session) : []),
  ]);
}

/** A net that is full by the angler's own word, or near it at the risk he bears. */
function nets({ session, units, warnings }: Sight, breaches: readonly Breach[]): Rows {
  const limitG = session.plan.netLimitG;
  if (typeof limitG !== "number") return [];
  const limit = weightWords(limitG, units);
  return session.nets.flatMap(({ number, spokenG, weighedG }): Rows => {
    const grams = weighedG ?? spokenG;
    const weight = weightWords(grams, units);
    const near = `net-${number}-near`;
    if (grams >= limitG - ROUNDING_G)
      return [
        [near, ""],
        ...(warnings.rules
          ? ([[`net-${number}-full`, say.netFull(number, weight, limit)]] as Rows)
          : []),
      ];
    const risk = breaches.find((one) => one.rule === "net" && one.net === number);
    if (risk?.rule !== "net") return [];
    const words = risk.standing === "over" ? say.netMayBeOver : say.netOneMore;
    return [[near, words(number, weight, limit)]];
  });
}

/** Rules that stay broken until something is written. */
function broken(breach: Breach, { units }: Sight): Rows {
  switch (breach.rule) {
    case "lash":
      return [
        ["lash", say.lash(lengthWords(breach.lashMm, units), lengthWords(breach.limitMm, units))],
      ];
    case "nets":
      return [["nets", say.nets(count(breach.used, "net"), String(breach.allowed))]];
    case "bait-banned":
      return [[`banned-${breach.bait}`, say.baitBanned(sentence(breach.bait))]];
    default:
      return [];
  }
}

/** A limit of bait is told of when it is reached: what goes in after that is too much. */
const bait = ({ session, sums, units }: Sight): Rows =>
  Object.entries(session.plan.baitLimitsG ?? {}).flatMap(([name, limitG]): Rows => {
    const grams = sums.baits.get(name)?.grams ?? 0;
    if (grams < limitG - ROUNDING_G) return [];
    return [[`bait-${name}`, say.baitUsedUp(name, weightWords(limitG, units))]];
  });

/** The rig in use sinks whoever made its shot and its float. */
function float({ plan, setUp }: Session): Rows {
  const rig = plan.rigs?.find(({ name }) => name === setUp.rig);
  if (!rig?.float || floating(rig.float, rig.shots) !== "sinks") return [];
  const name = /^\d+$/.test(rig.name) ? say.numberedRig(rig.name) : say.ownRig(rig.name);
  return [[`sinks-${rig.name}`, say.sinks(name)]];
}

/** @param now milliseconds since the epoch */
export function timeAlarms({ plan, state }: Session, now: number, warnings: Warnings): Alarms {
  const { startsAt, endsAt } = plan;
  if (!warnings.rules || state === "ready" || state === "ended") return new Map();
  const early: Rows =
    state === "fishing" && typeof startsAt === "number" && now < startsAt
      ? [["early", say.early(timeWords(startsAt - now))]]
      : [];
  if (typeof endsAt !== "number" || now < endsAt - TIME_NEAR_MS) return new Map(early);
  if (now < endsAt) return new Map([...early, ["time-near", say.timeNear]]);
  return new Map([...early, ["time-near", ""], ["time-up", say.timeUp]]);
}

/**
 * A pace that has gone quiet or come on. Once told it counts as known until fish have come at the
 * old pace again and the running sum is back at nought, so that a sum about its limit is told once.
 * @param known what was told before
 */
export function paceAlarms(session: Session, sums: Running, now: number, known: Alarms): Alarms {
  if (session.state !== "fishing") return new Map([...known].filter(([about]) => about in MOODS));
  const mood = sums.moodAt(now);
  const { fish, lastMs, sums: running } = sums.watch;
  const rows: Rows = [];
  if (mood === "quiet" || (known.has("quiet") && running.above > 0)) {
    const gap = timeWords(Math.max(0, now - (session.lastFishAt ?? now)));
    rows.push(["quiet", say.quiet(gap, waitWords(lastMs / Math.max(1, fish) / 1000))]);
  }
  if (mood === "on" || (known.has("on") && running.below > 0)) rows.push(["on", say.on]);
  return new Map(rows);
}

const MOODS = { quiet: true, on: true };

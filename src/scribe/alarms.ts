/** What must be said before it is too late: limits that are near or passed, and time running out. */

import { baitUsed } from "../analysis/rules/bait.ts";
import { breachesOf } from "../analysis/rules/breaches.ts";
import { MS_PER_MINUTE } from "../analysis/units.ts";
import { biasFrom, weighedNets } from "../analysis/weights/bias.ts";
import type { Session } from "../log/session.ts";
import { lengthWords, type Units, weightWords } from "./answers/words.ts";

/** The part of a net's limit at which it is called near, by what was spoken; our own choice. */
const NEAR = 0.9;
export const TIME_NEAR_MS = 10 * MS_PER_MINUTE;
/** The chance of a net over its limit that is borne in silence; our own choice. */
const RISK = 0.3;
/** Sums of ounces fall short of whole pounds by less than this, in grams. */
const ROUNDING_G = 0.01;

/** Sentences by what they are about: one that is new since the last look is to be spoken. */
export type Alarms = ReadonlyMap<string, string>;

/** All but the time, which alone changes while nothing is written. @param now milliseconds since the epoch */
export const limitAlarms = (session: Session, now: number, units: Units): Alarms =>
  new Map([...nets(session, now, units), ...lash(session, units), ...bait(session, units)]);

/** @param now milliseconds since the epoch */
export const timeAlarms = (session: Session, now: number): Alarms => new Map(time(session, now));

type Rows = (readonly [about: string, sentence: string])[];

function nets(session: Session, now: number, units: Units): Rows {
  const limitG = session.plan.netLimitG;
  if (typeof limitG !== "number") return [];
  const bias = biasFrom(weighedNets([session]));
  const risks = new Map(
    breachesOf(session, now, bias, RISK).flatMap((one) =>
      one.rule === "net" ? [[one.net, one.standing] as const] : [],
    ),
  );
  const limit = weightWords(limitG, units);
  return session.nets.flatMap(({ number, spokenG, weighedG }): Rows => {
    const grams = weighedG ?? spokenG;
    const weight = weightWords(grams, units);
    if (grams >= limitG - ROUNDING_G)
      return [
        [`net-${number}-near`, ""],
        [
          `net-${number}-full`,
          `Net ${number} is at its limit: ${weight} of ${limit}. Change nets.`,
        ],
      ];
    const risk = risks.get(number);
    if (grams < NEAR * limitG && !risk) return [];
    const standing = grams < NEAR * limitG && risk === "one-more" ? "one-more" : "near";
    return [[`net-${number}-near`, `${CLOSE[standing](number)}: ${weight} of ${limit}.`]];
  });
}

const CLOSE = {
  near: (net: number) => `Net ${net} is near its limit`,
  "one-more": (net: number) => `One more fish may put net ${net} over its limit`,
};

function lash({ setUp, plan }: Session, units: Units): Rows {
  const { lashMm } = setUp;
  const limitMm = plan.lashLimitMm;
  if (lashMm === undefined || typeof limitMm !== "number" || lashMm <= limitMm) return [];
  const [said, most] = [lengthWords(lashMm, units), lengthWords(limitMm, units)];
  return [["lash", `Too much line above the float: ${said}, and ${most} is allowed.`]];
}

function bait({ entries, plan }: Session, units: Units): Rows {
  const limits = Object.entries(plan.baitLimitsG ?? {});
  if (limits.length === 0) return [];
  const used = baitUsed(entries);
  return limits.flatMap(([name, limitG]): Rows => {
    const grams = used.get(name)?.grams ?? 0;
    if (grams < limitG - ROUNDING_G) return [];
    return [[`bait-${name}`, `The limit of ${weightWords(limitG, units)} of ${name} is used up.`]];
  });
}

function time({ plan, state }: Session, now: number): Rows {
  const { endsAt } = plan;
  if (state === "ready" || state === "ended" || typeof endsAt !== "number") return [];
  if (now >= endsAt)
    return [
      ["time-near", ""],
      ["time-up", "Time is up."],
    ];
  if (now < endsAt - TIME_NEAR_MS) return [];
  return [["time-near", "Ten minutes left."]];
}

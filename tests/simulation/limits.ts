/** Every 95 % interval of a day, held against the truth. */
import { biteTimes } from "../../src/analysis/bites/drops.ts";
import { paceOf } from "../../src/analysis/pace.ts";
import { currentRate } from "../../src/analysis/rate.ts";
import { catchRates } from "../../src/analysis/rates/catch-rates.ts";
import { compareRates } from "../../src/analysis/rates/compare.ts";
import { relationOf } from "../../src/analysis/size/species.ts";
import { workOutWeight } from "../../src/analysis/size/worked-out.ts";
import { type Bias, biasFactor, UNKNOWN_BIAS } from "../../src/analysis/weights/bias.ts";
import { totalOf } from "../../src/analysis/weights/total.ts";
import type { Session } from "../../src/log/session.ts";
import { at } from "../analysis/fixtures/session.ts";
import { gramsAt, sessionAt } from "./day.ts";
import type { Simulated } from "./days.ts";
import { type Try, tryOf, tryOfEstimate } from "./tally.ts";
import { expectedRate, expectedRecently, fishPerHour } from "./truth.ts";
import { DAY_MIN, meanGrams, type Place } from "./water.ts";

const NOW = at(DAY_MIN);
const WINDOW_MIN = 30;

interface Tried extends Simulated {
  /** As it stands at the day's end. */
  session: Session;
}

type Limits = (tried: Tried) => readonly Try[];

/** The levels of a factor with their catch rates, and the rate that was truly to be expected there. */
const levels = (factor: "depth" | "rig", { day, session }: Tried) =>
  catchRates(factor, session, NOW).flatMap((told) => {
    const isHere = ({ depthMm, rig }: Place) => (factor === "rig" ? rig : depthMm) === told.level;
    const isFished = told.hours > 0 && day.stays.some(({ place }) => isHere(place));
    return isFished ? [{ told, truth: expectedRate(day, isHere) }] : [];
  });

const fishBy =
  (factor: "depth" | "rig"): Limits =>
  (tried) =>
    levels(factor, tried).map(({ told, truth }) => tryOfEstimate(told.fishPerHour, truth));

/** Held against the weight as this angler judges it on the day: the sum is one of spoken weights. */
const gramsByDepth: Limits = (tried) => {
  const judgedG = meanGrams(tried.day.water) * Math.exp(-tried.day.low);
  return levels("depth", tried).map(({ told, truth }) =>
    tryOfEstimate(told.gramsPerHour, truth * judgedG),
  );
};

const lately: Limits = ({ day, session }) => [
  tryOfEstimate(currentRate(session, NOW).recent, expectedRecently(day, WINDOW_MIN)),
];

const ratio: Limits = ({ day, session }) => {
  const rates = catchRates("depth", session, NOW);
  const [one, other] = day.water.places;
  const [first, second] = [one, other].map((place) =>
    rates.find(({ level }) => level === place?.depthMm),
  );
  if (!first || !second || !other) return [];
  const truth = fishPerHour(day, one) / fishPerHour(day, other);
  return [tryOfEstimate(compareRates(first, second).ratio, truth)];
};

/** The drops at each depth, with the bites an hour that were truly to be had there. */
const waits = ({ day, session }: Tried) =>
  biteTimes("depth", session, NOW).flatMap((told) => {
    const place = day.water.places.find(({ depthMm }) => depthMm === told.level);
    return place ? [{ told, bitesPerHour: place.bitesPerHour }] : [];
  });

const SECONDS = 3600;

const medianBite: Limits = (tried) =>
  waits(tried).map(({ told, bitesPerHour }) =>
    tryOfEstimate(told.median, (Math.LN2 * SECONDS) / bitesPerHour),
  );

const CURVE_AT_S = 120;

const biteCurve: Limits = (tried) =>
  waits(tried).flatMap(({ told, bitesPerHour }) => {
    const step = told.curve.findLast(({ time }) => time <= CURVE_AT_S);
    return step ? [tryOf(step, Math.exp((-bitesPerHour * CURVE_AT_S) / SECONDS))] : [];
  });

/** A fish that was not heard is on the scales all the same. */
const factor: Limits = ({ day, learnt }) => [
  tryOfEstimate(biasFactor(learnt), Math.exp(day.angler.low) / (1 - day.kind.missed)),
];

/** The day's first fish, had it been measured and not weighed. */
const fromLength: Limits = ({ day }) => {
  const [fish] = day.landed;
  const relation = relationOf(fish?.species);
  return fish && relation ? [tryOf(workOutWeight(fish.lengthMm, relation), fish.grams)] : [];
};

type Knowing = (tried: Tried) => Bias;
const unknown: Knowing = () => UNKNOWN_BIAS;
const known: Knowing = ({ learnt }) => learnt;

const bag =
  (biasOf: Knowing): Limits =>
  (tried) => [tryOfEstimate(totalOf(tried.session, biasOf(tried)), gramsAt(tried.day, DAY_MIN))];

const finalBag =
  (minute: number, biasOf: Knowing): Limits =>
  (tried) => {
    const session = sessionAt(tried.day, minute, { endsAt: NOW });
    const { final } = paceOf(session, at(minute), biasOf(tried));
    return final.tells ? [tryOf(final, gramsAt(tried.day, DAY_MIN))] : [];
  };

const LIMITS: Readonly<Record<string, Limits>> = {
  "fish an hour by depth": fishBy("depth"),
  "fish an hour by rig": fishBy("rig"),
  "fish in the last half hour": lately,
  "grams an hour by depth": gramsByDepth,
  "one depth against another": ratio,
  "median time to a bite": medianBite,
  "bite-time curve at two minutes": biteCurve,
  "weight of a fish from its length": fromLength,
  "spoken against scales, three days weighed": factor,
  "bag, angler unknown": bag(unknown),
  "bag, three days weighed": bag(known),
  "final bag after 75 min, angler unknown": finalBag(75, unknown),
  "final bag after 150 min, angler unknown": finalBag(150, unknown),
  "final bag after 75 min, three days weighed": finalBag(75, known),
  "final bag after 150 min, three days weighed": finalBag(150, known),
};

export type Tries = Readonly<Record<string, readonly Try[]>>;

/** What came of all limits on some days. */
export function tryLimits(days: Iterable<Simulated>): Tries {
  const tries = Object.fromEntries(Object.keys(LIMITS).map((name): [string, Try[]] => [name, []]));
  for (const simulated of days) {
    const tried = { ...simulated, session: sessionAt(simulated.day, DAY_MIN) };
    for (const [name, limits] of Object.entries(LIMITS)) tries[name]?.push(...limits(tried));
  }
  return tries;
}

/** The days on which the sums are tried. */
import { type Bias, biasFrom, weighedNets } from "../../src/analysis/weights/bias.ts";
import { type Day, drawDay, type Kind, weighedSession } from "./day.ts";
import { drawAngler } from "./fishing.ts";
import { type Random, randomOf } from "./random.ts";
import { DAY_MIN, drawWater, type WaterKind } from "./water.ts";

export interface DayKind extends Kind, WaterKind {
  /** How far anglers lie off the scales: standard deviation of ln(true / judged). */
  anglerSpread: number;
}

/** A day as the sums take it to be: all is heard and said, bites come by chance alone. */
export const AS_ASSUMED: DayKind = {
  moves: true,
  missed: 0,
  unsaid: 0,
  handlingMin: 0,
  spellSpread: 0,
  placeSpread: 0.4,
  anglerSpread: 0.2,
};

/** The same, and days that differ from it in one thing each. */
export const DAY_KINDS = {
  "as assumed": AS_ASSUMED,
  "one place all day": { ...AS_ASSUMED, moves: false },
  "1 in 20 phrases missed": { ...AS_ASSUMED, missed: 0.05 },
  "3 in 10 weights unsaid": { ...AS_ASSUMED, unsaid: 0.3 },
  "90 s to land and bait": { ...AS_ASSUMED, handlingMin: 1.5 },
  "shoals come and go": { ...AS_ASSUMED, spellSpread: 0.5 },
} as const satisfies Record<string, DayKind>;

export interface Simulated {
  day: Day;
  /** What earlier days of the angler taught about his weights. */
  learnt: Bias;
}

const EARLIER_DAYS = 3;

function simulate(kind: DayKind, random: Random): Simulated {
  const angler = drawAngler(kind.anglerSpread, random);
  const next = () => drawDay(kind, drawWater(kind, random), angler, random);
  const earlier = Array.from({ length: EARLIER_DAYS }, (_, place) =>
    weighedSession(next(), DAY_MIN, `earlier-${place}`),
  );
  return { day: next(), learnt: biasFrom(weighedNets(earlier)) };
}

/** One simulated day for each seed from `seed` on. */
export function* simulatedDays(kind: DayKind, count: number, seed: number): Generator<Simulated> {
  for (let place = 0; place < count; place += 1) yield simulate(kind, randomOf(seed + place));
}

/** A day of fishing as it truly went, minute by minute. */
import type { Random } from "./random.ts";
import {
  bitesPerMinute,
  DAY_MIN,
  drawFish,
  type Fish,
  fastest,
  LANDED,
  MISSED,
  type Place,
  type Water,
} from "./water.ts";

/** A fish landed, with the grams the angler takes it for and the net it goes into. */
export interface Landed extends Fish {
  judgedG: number;
  net: number;
}

export type Happening = { minute: number } & (
  | { what: "start" | "stop" | "pause" | "resume" | "drop" | "bite" | "missed" | "lost" | "net" }
  | { what: "move"; place: Place }
  | { what: "landed"; fish: Landed }
);

/** Time at one place, a pause out. */
export interface Stay {
  place: Place;
  from: number;
  to: number;
}

export interface Ways {
  /** Minutes from a bite until the rig is in again; 0 where that is left out. */
  handlingMin: number;
  /** Whether the angler moves between places. */
  moves: boolean;
}

export interface Angler {
  /** Mean of ln(true weight / judged weight): above 0 he judges too low. */
  low: number;
  /** Standard deviation of a day's mean about his own: some judge alike every day, some do not. */
  daySpread: number;
}

/** How far one angler's days, and his fish, lie apart, in ln W. Our own choice. */
const DAY_SPREAD = [0.03, 0.13] as const;
const FISH_SPREAD = 0.2;

export const drawAngler = (spread: number, random: Random): Angler => ({
  low: random.normal(spread),
  daySpread: random.between(...DAY_SPREAD),
});

/** Without a bite the rig comes out and goes in again. */
const PATIENCE_MIN = 8;
/** The angler puts so much into a net, as he judges it. */
const NET_G = [6000, 30_000] as const;

const [PAUSE_FROM, PAUSE_TO] = [45, 60];

/** The places in turn, twenty to forty minutes each, with one pause. */
export function planStays({ places }: Water, { moves }: Ways, random: Random): Stay[] {
  if (!moves) return [{ place: places[0], from: 0, to: DAY_MIN }];
  const stays: Stay[] = [];
  for (let from = 0, turn = 0; from < DAY_MIN; turn += 1) {
    const place = places[turn % places.length] ?? places[0];
    const to = Math.min(DAY_MIN, from + random.between(20, 40));
    stays.push({ place, from, to });
    from = to;
  }
  return stays.flatMap(({ place, from, to }) =>
    [
      { place, from, to: Math.min(to, PAUSE_FROM) },
      { place, from: Math.max(from, PAUSE_TO), to },
    ].filter((stay) => stay.from < stay.to),
  );
}

/** When it bites next, from a time on, or Infinity: candidates at the fastest rate are thinned. */
function nextBite(water: Water, place: Place, from: number, until: number, random: Random): number {
  const most = fastest(water, place);
  for (let minute = from + random.exponential(1 / most); minute < until; ) {
    if (random.happens(bitesPerMinute(water, place, minute) / most)) return minute;
    minute += random.exponential(1 / most);
  }
  return Number.POSITIVE_INFINITY;
}

/** How an angler judges on one day. */
export const drawDayLow = ({ low, daySpread }: Angler, random: Random): number =>
  low + random.normal(daySpread);

/**
 * Lands fish: each judged, and put into the net in use or, where that is full, into the next.
 * @param low mean of ln(true weight / judged weight) on that day
 */
function lander(water: Water, low: number, random: Random): (minute: number) => Happening[] {
  const netG = random.between(...NET_G);
  let [net, inNet] = [1, 0];
  return (minute) => {
    const fish = drawFish(water, random);
    const off = random.normal(FISH_SPREAD) - FISH_SPREAD ** 2 / 2;
    const judgedG = fish.grams * Math.exp(off - low);
    const isFull = inNet + judgedG > netG;
    if (isFull) net += 1;
    inNet = isFull ? judgedG : inNet + judgedG;
    const landed: Happening = { minute, what: "landed", fish: { ...fish, judgedG, net } };
    return isFull ? [{ minute, what: "net" }, landed] : [landed];
  };
}

function fishStay(
  water: Water,
  { handlingMin }: Ways,
  { place, from, to }: Stay,
  land: (minute: number) => Happening[],
  random: Random,
): Happening[] {
  const happenings: Happening[] = [{ minute: from, what: "move", place }];
  for (let minute = from; minute < to; ) {
    happenings.push({ minute, what: "drop" });
    const until = Math.min(to, minute + PATIENCE_MIN);
    const bite = nextBite(water, place, minute, until, random);
    minute = Math.min(bite, until);
    if (bite >= until) continue;
    happenings.push({ minute, what: "bite" });
    const fate = random.between(0, 1);
    if (fate < LANDED) happenings.push(...land(Math.min(minute + handlingMin / 2, to)));
    else happenings.push({ minute, what: fate < LANDED + MISSED ? "missed" : "lost" });
    minute += handlingMin;
  }
  return happenings;
}

const breakBetween = (one: Stay | undefined, next: Stay): Happening[] =>
  one && one.to < next.from
    ? [
        { minute: one.to, what: "pause" },
        { minute: next.from, what: "resume" },
      ]
    : [];

/**
 * What a day brings to an angler who keeps to his stays.
 * @param low mean of ln(true weight / judged weight) on that day
 */
export function fishDay(
  water: Water,
  ways: Ways,
  stays: readonly Stay[],
  low: number,
  random: Random,
): Happening[] {
  const land = lander(water, low, random);
  const fished = stays.flatMap((stay, place) => [
    ...breakBetween(stays[place - 1], stay),
    ...fishStay(water, ways, stay, land, random),
  ]);
  return [{ minute: 0, what: "start" }, ...fished, { minute: DAY_MIN, what: "stop" }];
}

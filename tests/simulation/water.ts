/** What is so, and nobody on the bank can know: where fish bite how fast, and how big they are. */
import { type Relation, weightAt } from "../../src/analysis/size/relation.ts";
import { RELATIONS } from "../../src/analysis/size/species.ts";
import type { Random } from "./random.ts";

/** A rig at a depth. */
export interface Place {
  rig: string;
  depthMm: number;
  bitesPerHour: number;
}

/** From `minute` on every place bites `times` as fast. */
export interface Turn {
  minute: number;
  times: number;
}

export interface Water {
  places: readonly [Place, ...Place[]];
  turn?: Turn;
  /** What the rates are multiplied by in each spell of `SPELL_MIN`: shoals come and go. */
  spells: readonly number[];
  /** How much fatter than the relation its fish are, in ln W. */
  condition: number;
}

export const DAY_MIN = 300;
const SPELL_MIN = 10;

/** Of the bites that are met: most are landed, the others missed or lost. */
export const LANDED = 0.7;
export const MISSED = 0.15;

/** Each rig is made for two depths. */
const RIGS = [
  { rig: "1", depthMm: 400 },
  { rig: "1", depthMm: 800 },
  { rig: "2", depthMm: 1200 },
  { rig: "2", depthMm: 1800 },
] as const;

/** How waters differ among each other. */
const WATER_SPREAD = 0.5;
const BITES_PER_HOUR = 20;

export interface WaterKind {
  /** Spread of the rate between spells; 0 for none. */
  spellSpread: number;
  /** How places of one water differ, as a standard deviation in means. */
  placeSpread: number;
}

/** A water as no other, with four places. */
export function drawWater({ spellSpread, placeSpread }: WaterKind, random: Random): Water {
  const common = BITES_PER_HOUR * random.gamma(WATER_SPREAD);
  // A rig has its share in what makes a place good.
  const byRig = { "1": random.gamma(placeSpread / 2), "2": random.gamma(placeSpread / 2) };
  const drawPlace = ({ rig, depthMm }: (typeof RIGS)[number]): Place => ({
    rig,
    depthMm,
    bitesPerHour: common * byRig[rig] * random.gamma(placeSpread),
  });
  const [first, ...others] = RIGS;
  return {
    places: [drawPlace(first), ...others.map(drawPlace)],
    spells: drawSpells(spellSpread, random),
    condition: random.normal(0.15),
  };
}

/** A water with one place that gives so many fish an hour, and otherwise from a turn on. */
export const plainWater = (
  fishPerHour: number,
  spellSpread: number,
  random: Random,
  turn?: Turn,
): Water => ({
  places: [{ rig: "1", depthMm: 400, bitesPerHour: fishPerHour / LANDED }],
  ...(turn && { turn }),
  spells: drawSpells(spellSpread, random),
  condition: 0,
});

const drawSpells = (spread: number, random: Random): number[] =>
  spread === 0 ? [] : Array.from({ length: DAY_MIN / SPELL_MIN }, () => random.gamma(spread));

/** Bites a minute at a place. */
export function bitesPerMinute({ spells, turn }: Water, place: Place, minute: number): number {
  const spell = spells[Math.floor(minute / SPELL_MIN)] ?? 1;
  const turned = turn && minute >= turn.minute ? turn.times : 1;
  return (place.bitesPerHour / 60) * spell * turned;
}

/** A rate that bites at this place are never above. */
export const fastest = ({ spells, turn }: Water, place: Place): number =>
  (place.bitesPerHour / 60) * Math.max(1, ...spells) * Math.max(1, turn?.times ?? 1);

export interface Fish {
  species: string;
  grams: number;
  lengthMm: number;
}

interface Kin {
  species: string;
  lengthMm: number;
  spread: number;
}

/** Species, the middle of their lengths in millimetres, and the spread of ln L. */
const SHOAL: readonly [Kin, ...Kin[]] = [
  { species: "carp", lengthMm: 360, spread: 0.15 },
  { species: "f1", lengthMm: 300, spread: 0.12 },
  { species: "bream", lengthMm: 320, spread: 0.15 },
  { species: "roach", lengthMm: 190, spread: 0.15 },
];

function relationFor(species: string): Relation {
  const relation = RELATIONS[species];
  if (!relation) throw new Error(`no relation for ${species}`);
  return relation;
}

export function drawFish({ condition }: Water, random: Random): Fish {
  const { species, lengthMm: middle, spread } = random.pick(SHOAL);
  const relation = relationFor(species);
  const lengthMm = middle * Math.exp(random.normal(spread));
  const grams = weightAt(lengthMm, relation) * Math.exp(condition + random.normal(relation.spread));
  return { species, lengthMm, grams };
}

/** Mean grams of its fish: lengths and weights are log-normal. */
export function meanGrams({ condition }: Water): number {
  const means = SHOAL.map(({ species, lengthMm, spread }) => {
    const relation = relationFor(species);
    const variance = (relation.b * spread) ** 2 + relation.spread ** 2;
    return weightAt(lengthMm, relation) * Math.exp(condition + variance / 2);
  });
  return means.reduce((total, grams) => total + grams, 0) / means.length;
}

/** A weight for every fish: as said, else from its length, else from the fish like it. */
import type { Entry } from "../../log/session.ts";
import { groupBy } from "../group.ts";
import type { Measured } from "../size/fit.ts";
import { relationOf } from "../size/species.ts";
import { conditionAfter, workOutWeight } from "../size/worked-out.ts";
import { type Typical, typicalFish } from "./typical.ts";

export interface FilledWeight {
  entry: Entry;
  count: number;
  how: "said" | "length" | "mean";
  /** Grams of one of them. */
  eachG: number;
  /** Variance of one of them, in grams squared; 0 for what was said. */
  variance: number;
}

export interface Filled {
  fish: readonly FilledWeight[];
  /** Fish of which nothing can be worked out, because none was weighed. */
  unknown: number;
}

interface Landed {
  entry: Entry;
  species: string | undefined;
  count: number;
  weightG: number | undefined;
  lengthMm: number | undefined;
}

/** The fish among some entries, in their order. */
const landedIn = (entries: readonly Entry[]): Landed[] =>
  entries.flatMap((entry) => {
    const { statement } = entry;
    if (statement.kind !== "fish") return [];
    const { species, count = 1, weightG, lengthMm } = statement;
    return [{ entry, species, count, weightG, lengthMm }];
  });

/**
 * Weights for all fish among the entries, marked by how they came about. What was said stands as it
 * was said; the angler's bias is not taken out here.
 */
export function fillWeights(entries: readonly Entry[]): Filled {
  const landed = landedIn(entries);
  const bySpecies = groupBy(landed, ({ species }) => species);
  const fillers = new Map(
    [...bySpecies].map(([species, like]) => [species, fillerFor(like, landed)]),
  );
  const fish = landed.flatMap((one) => {
    const filled = fillers.get(one.species)?.(one);
    return filled ? [{ entry: one.entry, count: one.count, ...filled }] : [];
  });
  const known = fish.reduce((total, { count }) => total + count, 0);
  return { fish, unknown: landed.reduce((total, { count }) => total + count, 0) - known };
}

type Filler = (fish: Landed) => Pick<FilledWeight, "how" | "eachG" | "variance"> | undefined;

/** How to fill in one species: `like` are its fish, `all` those to fall back on if none was weighed. */
function fillerFor(like: readonly Landed[], all: readonly Landed[]): Filler {
  const relation = relationOf(like[0]?.species);
  const shift = relation && conditionAfter(like.flatMap(pairOf), relation);
  const typical = fillingOf(like) ?? fillingOf(all);
  return ({ weightG, lengthMm }) => {
    if (weightG !== undefined) return { how: "said", eachG: weightG, variance: 0 };
    if (lengthMm !== undefined && relation && shift) {
      const worked = workOutWeight(lengthMm, relation, shift);
      return { how: "length", eachG: worked.weightG, variance: worked.variance };
    }
    return typical && { how: "mean", eachG: typical.meanG, variance: typical.variance };
  };
}

const pairOf = ({ weightG, lengthMm }: Landed): Measured[] =>
  weightG === undefined || lengthMm === undefined ? [] : [{ weightG, lengthMm }];

/**
 * A typical fish of those that were weighed. The doubt about its mean is shared by all fish filled
 * with it, so it is charged to each as many times as there are fish to fill.
 */
function fillingOf(fish: readonly Landed[]): Typical | undefined {
  const typical = typicalFish(
    fish.flatMap(({ weightG, count }) =>
      weightG === undefined ? [] : [{ count, eachG: weightG }],
    ),
  );
  if (!typical) return undefined;
  const all = fish.reduce((total, { count }) => total + count, 0);
  return { ...typical, variance: (typical.variance * all) / typical.fish };
}

/** A weight for every fish: as said, else from its length, else from the fish like it. */
import type { Entry } from "../../log/session.ts";
import { relationOf } from "../size/species.ts";
import { conditionFrom, type Shifted, shiftedBy } from "../size/worked-out.ts";
import { type CatchTally, type KindSums, type Kinds, tallyOf, withKind } from "./catch-tally.ts";
import { alike, type MassSums, type Typical, typicalOf, withMass } from "./typical.ts";

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

/** What fills in the fish of one kind. */
interface Filler {
  /** For those with a length; undefined where no relation is known. */
  byLength: Shifted | undefined;
  /** For those with nothing; undefined while no fish at all was weighed. */
  typical: Typical | undefined;
}

/**
 * A typical fish of those that were weighed. The doubt about its mean is shared by all fish filled
 * with it, so it is charged to each as many times as there are fish to fill.
 */
function typicalIn({ fish, said }: KindSums): Typical | undefined {
  const typical = typicalOf(said);
  return typical && { ...typical, variance: (typical.variance * fish) / typical.fish };
}

/** How each kind in the tally is filled in; a kind none of which was weighed is like all the others. */
export function fillersOf({ kinds }: CatchTally): (species: string | undefined) => Filler {
  const [first, ...others] = kinds.values();
  const all = first && others.reduce(withKind, first);
  const fallBack = all && typicalIn(all);
  return (species) => {
    const kind = kinds.get(species);
    const relation = relationOf(species);
    return {
      byLength:
        kind && relation && shiftedBy(relation, conditionFrom(kind.pairs, kind.pairLogs, relation)),
      typical: (kind && typicalIn(kind)) ?? fallBack,
    };
  };
}

/**
 * Weights for all fish among the entries, in their order, marked by how they came about. What was
 * said stands as it was said; the angler's bias is not taken out here.
 */
export function fillWeights(entries: readonly Entry[]): Filled {
  const fillerOf = fillersOf(tallyOf(entries));
  const fish: FilledWeight[] = [];
  let unknown = 0;
  for (const entry of entries) {
    if (entry.statement.kind !== "fish") continue;
    const { count = 1 } = entry.statement;
    const filled = filledIn(entry, fillerOf(entry.statement.species));
    if (filled) fish.push({ entry, count, ...filled });
    else unknown += count;
  }
  return { fish, unknown };
}

function filledIn(
  { statement }: Entry,
  { byLength, typical }: Filler,
): Pick<FilledWeight, "how" | "eachG" | "variance"> | undefined {
  if (statement.kind !== "fish") return undefined;
  const { weightG, lengthMm } = statement;
  if (weightG !== undefined) return { how: "said", eachG: weightG, variance: 0 };
  if (lengthMm !== undefined && byLength) return { how: "length", ...byLength.ofLength(lengthMm) };
  return typical && { how: "mean", eachG: typical.meanG, variance: typical.variance };
}

/** Fish whose weights are known or filled in. */
export interface FilledSums extends MassSums {
  /** What was filled in is in doubt by this variance, in grams squared. */
  variance: number;
  /** Fish of which nothing can be worked out. */
  unknown: number;
}

/** The same as `fillWeights`, added up, from sums alone. */
export function filledSums(kinds: Kinds, fillerOf: (species?: string) => Filler): FilledSums {
  let sums: FilledSums = { fish: 0, totalG: 0, squares: 0, variance: 0, unknown: 0 };
  for (const [species, { fish, said, byLength }] of kinds) {
    const { byLength: shifted, typical } = fillerOf(species);
    const long = shifted ? shifted.ofSums(byLength) : { ...byLength, variance: 0 };
    const rest = fish - said.fish - byLength.fish;
    const filled = typical ? alike(rest, typical.meanG) : alike(0, 0);
    sums = {
      ...withMass(withMass(sums, said), withMass(long, filled)),
      variance: sums.variance + long.variance + (typical ? rest * typical.variance : 0),
      unknown: sums.unknown + (typical ? 0 : rest),
    };
  }
  return sums;
}

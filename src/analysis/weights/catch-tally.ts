/** The fish of a session by net and kind, as sums: a fish more costs the same however many there are. */
import type { Entry } from "../../log/session.ts";
import { weightAt } from "../size/relation.ts";
import { relationOf } from "../size/species.ts";
import { alike, type MassSums, NO_MASS, withMass } from "./typical.ts";

/** Fish of one kind in one net. */
export interface KindSums {
  fish: number;
  /** Those whose weight was said. */
  said: MassSums;
  /** Those whose length alone was said, at the weights of the kind's relation. */
  byLength: MassSums;
  /** Entries with both, and ln(said / relation's weight) of them added up. */
  pairs: number;
  pairLogs: number;
}

const NO_FISH: KindSums = { fish: 0, said: NO_MASS, byLength: NO_MASS, pairs: 0, pairLogs: 0 };

/** Both added up. */
export const withKind = (one: KindSums, other: KindSums): KindSums => ({
  fish: one.fish + other.fish,
  said: withMass(one.said, other.said),
  byLength: withMass(one.byLength, other.byLength),
  pairs: one.pairs + other.pairs,
  pairLogs: one.pairLogs + other.pairLogs,
});

/** By species; undefined is fish of none named. */
export type Kinds = ReadonlyMap<string | undefined, KindSums>;

/** What one entry adds; undefined where it is no fish. */
function kindOf({ statement }: Entry): KindSums | undefined {
  if (statement.kind !== "fish") return undefined;
  const { species, count = 1, weightG, lengthMm } = statement;
  const relation = relationOf(species);
  const expectedG = relation && lengthMm !== undefined ? weightAt(lengthMm, relation) : undefined;
  const isPair = weightG !== undefined && expectedG !== undefined;
  return {
    fish: count,
    said: weightG === undefined ? NO_MASS : alike(count, weightG),
    byLength: weightG !== undefined || expectedG === undefined ? NO_MASS : alike(count, expectedG),
    pairs: isPair ? 1 : 0,
    pairLogs: isPair ? Math.log(weightG / expectedG) : 0,
  };
}

/** Kinds of fish over the session, and net by net. */
export class CatchTally {
  readonly #kinds = new Map<string | undefined, KindSums>();
  readonly #nets = new Map<number, Map<string | undefined, KindSums>>();

  /** Takes an entry; one that is no fish adds nothing. */
  add(entry: Entry): void {
    const more = kindOf(entry);
    if (!more || entry.statement.kind !== "fish") return;
    const { species } = entry.statement;
    const net = this.#nets.get(entry.net) ?? new Map<string | undefined, KindSums>();
    this.#nets.set(entry.net, net);
    for (const kinds of [this.#kinds, net]) {
      kinds.set(species, withKind(kinds.get(species) ?? NO_FISH, more));
    }
  }

  get kinds(): Kinds {
    return this.#kinds;
  }

  /** No kinds for a net without a fish. */
  inNet(number: number): Kinds {
    return this.#nets.get(number) ?? new Map();
  }
}

/** The tally after these entries, in the order in which they were fished; one pass over them. */
export function tallyOf(entries: readonly Entry[]): CatchTally {
  const tally = new CatchTally();
  for (const entry of entries) tally.add(entry);
  return tally;
}

/** Names to choose from: those that are built in, and the angler's own. */
import { BAITS } from "../../grammar/vocabulary/baits.ts";
import { SPECIES } from "../../grammar/vocabulary/species.ts";
import type { Plan } from "../log/event.ts";

const own = (words: readonly { name: string }[] | null | undefined): string[] =>
  (words ?? []).map(({ name }) => name);

/** Ids of species, the angler's own first. */
export const speciesNames = (plan: Plan): string[] => [
  ...own(plan.ownSpecies),
  ...SPECIES.map(({ id }) => id),
];

/** Ids of baits, the angler's own first. */
export const baitNames = (plan: Plan): string[] => [
  ...own(plan.ownBaits),
  ...BAITS.map(({ id }) => id),
];

/** The angler's own rigs and those that were fished. */
export const rigNames = (plan: Plan, fished: readonly string[]): string[] => [
  ...new Set([...own(plan.ownRigs), ...own(plan.rigs), ...fished, "1", "2", "3", "4"]),
];

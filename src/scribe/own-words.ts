/** What the angler's own words are, for whoever reads or hears him. */
import type { OwnWord, Plan } from "../log/event.ts";

/** Species, baits and rigs of the plan; a rig that was made up by a name is said by it. */
export const ownWords = ({ ownSpecies = [], ownBaits = [], ownRigs = [], rigs }: Plan) => ({
  species: ownSpecies,
  baits: ownBaits,
  rigs: [...ownRigs, ...namedRigs(rigs ?? [], ownRigs)],
});

/** "Rig two" is understood as it is. */
const namedRigs = (rigs: readonly { name: string }[], own: readonly OwnWord[]): OwnWord[] =>
  rigs.flatMap(({ name }) =>
    /^\d+$/.test(name) || own.some((word) => word.name === name) ? [] : [{ name, spoken: [] }],
  );

/**
 * Species, the ways they are named on the bank, and the sizes they can be believed at. Largest
 * weights and lengths are rounded up from British stillwater catches, from memory: they decide only
 * whether an entry is put up for a second look.
 */

export interface Species {
  id: string;
  /** First is how it is said back; plurals are understood by themselves. */
  names: readonly string[];
  /** Largest believable fish, grams and millimetres. */
  mostG: number;
  mostMm: number;
}

const species = (
  id: string,
  mostKg: number,
  mostCm: number,
  ...names: readonly string[]
): Species => ({ id, names: [id, ...names], mostG: mostKg * 1000, mostMm: mostCm * 10 });

export const SPECIES: readonly Species[] = [
  { id: "f1", names: ["F1", "f one", "eff one", "carp f1", "f1 carp"], mostG: 4000, mostMm: 600 },
  species(
    "carp",
    30,
    120,
    "mirror",
    "common",
    "mirror carp",
    "common carp",
    "ghost",
    "ghost carp",
    "ghostie",
    "leather",
    "leather carp",
    "linear carp",
    "linear mirror",
    "koi",
    "koi carp",
    "king carp",
    "grass carp",
    "stockie carp",
    "fully scaled",
    "fully scaled mirror",
    "wildie",
  ),
  species("crucian", 2.3, 45, "crucian carp", "cru", "crucie"),
  species("bream", 10, 80, "bronze bream", "slab", "silver bream", "common bream"),
  species("skimmer", 2, 50, "skimmer bream", "skim", "blade"),
  species("roach", 2, 50, "redfin"),
  species("rudd", 2.3, 50, "golden rudd"),
  species("tench", 7, 75, "tinca", "golden tench", "green tench"),
  species("perch", 3, 60, "stripey", "stripey perch", "sergeant"),
  species("ide", 4, 65, "orfe", "golden orfe", "blue orfe"),
  species("chub", 4.5, 75),
  species("barbel", 10, 100, "barb"),
  species("gudgeon", 0.2, 22, "gonk", "gobio"),
  species("hybrid", 5, 70, "roach bream hybrid", "roach bream", "bream hybrid", "roach hybrid"),
  species("goldfish", 3, 50, "brown goldfish", "gold fish"),
  species("pike", 20, 140, "jack pike", "jack"),
  species("eel", 5, 130, "bootlace", "bootlace eel"),
  species("zander", 10, 110, "pikeperch"),
  species("trout", 10, 90, "rainbow trout", "brown trout", "rainbow", "brownie"),
];

export const speciesById: ReadonlyMap<string, Species> = new Map(
  SPECIES.map((entry) => [entry.id, entry]),
);

/** Baits, and the words for size, colour and kind that may stand before them. */

export interface Bait {
  id: string;
  /** First is how it is said back. */
  names: readonly string[];
}

export const BAITS: readonly Bait[] = [
  { id: "pellet", names: ["pellet", "pellets", "micros", "expanders", "expander"] },
  { id: "maggot", names: ["maggot", "maggots", "reds", "squatts", "squats", "magot", "magots"] },
  { id: "caster", names: ["caster", "casters", "castor", "castors"] },
  { id: "corn", names: ["corn", "sweetcorn", "sweet corn", "grain of corn", "grain"] },
  {
    id: "meat",
    names: ["meat", "luncheon meat", "cube of meat", "cubed meat", "punched meat", "cube"],
  },
  {
    id: "worm",
    names: [
      "worm",
      "worms",
      "dendra",
      "dendras",
      "dendrobaena",
      "dendrobaenas",
      "lobworm",
      "lobworms",
      "redworm",
      "redworms",
      "piece of worm",
      "bit of worm",
    ],
  },
  { id: "paste", names: ["paste"] },
  { id: "bread", names: ["bread", "breadpunch", "bread punch", "punch", "punched bread"] },
  { id: "pinkie", names: ["pinkie", "pinkies", "pinky", "pinkys"] },
  {
    id: "groundbait",
    names: ["groundbait", "ground bait", "crumb", "brown crumb", "fishmeal groundbait"],
  },
  { id: "hemp", names: ["hemp", "hempseed", "hemp seed"] },
  { id: "wafter", names: ["wafter", "wafters", "dumbbell", "dumbbells", "dumbell"] },
];

/** Names that carry their kind with them: "micros" are micro pellets. */
export const NAMED_KINDS: ReadonlyMap<string, string> = new Map([
  ["micros", "micro"],
  ["expanders", "expander"],
  ["expander", "expander"],
  ["reds", "red"],
  ["squatts", "squatt"],
  ["squats", "squatt"],
]);

export const BAIT_QUALITIES: ReadonlySet<string> = new Set(
  (
    "red white bronze yellow green orange pink black brown purple fluoro natural dark light " +
    "hard soft expander banded micro double triple dead live " +
    "jelly soaked cooked dyed mini washed sinking floating slow krill fishmeal sweet " +
    "big large small little tiny coloured flavoured cold"
  ).split(" "),
);

/** How many and how cut: understood before a bait, but no size or colour to keep. */
export const BAIT_CUTS: ReadonlySet<string> = new Set(
  "single chopped punched cubed fresh whole half loose cut minced".split(" "),
);

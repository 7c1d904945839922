/** Naming species, baits and rigs of the angler's own. */
export const ownWordsWords = {
  title: "Words of your own",
  what: "What you name here is understood when it is said, and offered where there is a choice.",
  species: "Species",
  baits: "Baits",
  rigs: "Rigs",
  said: (ways: readonly string[]) => `, said “${ways.join("”, “")}”`,
  like: (sounds: string) => `, sounds like “${sounds}”`,
  takeOut: "Take out",
  takeOutNamed: (name: string) => `Take out ${name}`,
  addTo: (kind: string) => `Add to ${kind.toLowerCase()}`,
  add: "Add",
  name: "Name",
  also: "Also said",
  alsoHint: "Other ways it is spoken, with commas between them.",
  sounds: "Sounds like",
  soundsHint:
    "Only if the ears inside the app miss it: the same sound in plain words, such as “ruff” for “ruffe”. A name of several words needs as many here.",
} as const;

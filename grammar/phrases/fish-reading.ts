/**
 * From the items of a fish phrase to fish. Parts come in any order; one that is said a second time
 * begins the next fish ("two pound F1, three pound tench").
 */
import type { Item } from "../match/items.ts";
import { GRAMS_PER_OUNCE, GRAMS_PER_POUND, OUNCES_PER_POUND } from "../quantity/units.ts";
import type { StatementOf, Unit } from "../statement.ts";
import { speciesById } from "../vocabulary/species.ts";
import { hasSpareSize, isListed, listedBefore, shareOut } from "./fish-sharing.ts";
import { RULES } from "./rules.ts";

type Fish = StatementOf<"fish">;

interface Draft extends Omit<Fish, "unit"> {
  unit: Unit;
  /** Bare numbers after the fish was named. */
  numbers: number[];
  shared: boolean;
}

export interface FishesRead {
  fishes: Fish[];
  doubts: string[];
}

const wordsOf = (rule: string): ReadonlySet<string> =>
  new Set((RULES[rule] ?? "").split("|").map((row) => row.trim()));

const ABOUT = wordsOf("about");
const ROUGHLY = wordsOf("roughly");
const QUALITY = wordsOf("quality");
/** "five roach for a pound": the weight is all of theirs together. */
const SHARED = [
  "for",
  "between them",
  "the lot",
  "the pair",
  "altogether",
  "all in",
  "all told",
  "in total",
];

const newDraft = (): Draft => ({ kind: "fish", unit: {}, numbers: [], shared: false });

export function readFishes(items: readonly Item[]): FishesRead {
  const drafts: Draft[] = [newDraft()];
  const draftFor = (taken: (draft: Draft) => boolean): Draft => {
    const last = drafts.at(-1) as Draft;
    if (!taken(last)) return last;
    const next = newDraft();
    drafts.push(next);
    return next;
  };
  const named = items.findIndex(namesFish);
  /** "two roach, three perch": a number right before a fish begins one. */
  const countFish = (count: number, index: number) => {
    const begins = index > named && countsNext(items, index);
    draftFor((d) => d.count !== undefined || (begins && d.species !== undefined)).count = count;
  };

  items.forEach((item, index) => {
    if ("word" in item) return;
    if (item.slot === "species") draftFor((d) => d.species !== undefined).species = item.value;
    if (item.slot === "weight") {
      const isTaken = (d: Draft) => d.weightG !== undefined || isOfNext(d, items[index + 1]);
      for (const g of [...listedBefore(items, index, named), item.value.g])
        takeWeight(draftFor(isTaken), { ...item.value, g });
    }
    if (item.slot === "length")
      takeLength(
        draftFor((d) => d.lengthMm !== undefined),
        item.value,
      );
    if (item.slot === "count") draftFor((d) => d.count !== undefined).count = item.value;
    if (item.slot === "number") {
      if (isCount(items, index, named)) countFish(item.value, index);
      else if (!isListed(items, index, named)) (drafts.at(-1) as Draft).numbers.push(item.value);
    }
  });

  markWords(drafts, items);
  const doubts: string[] = [];
  const fishes = shareOut(drafts).map((draft) => finish(draft, doubts));
  if (isUnclearShare(drafts)) doubts.push("whose weight it is");
  if (hasSpareSize(fishes)) doubts.push("more sizes than fish");
  return { fishes, doubts };
}

/** "four roach and two perch, eight ounces the lot". */
const isUnclearShare = (drafts: readonly Draft[]): boolean =>
  drafts.length > 1 &&
  drafts.some(({ shared, weightG }) => shared && weightG !== undefined) &&
  drafts.some(({ count }) => count !== undefined);

/** "two gudgeon, eight ounce skimmer": the weight is the next fish's. */
const isOfNext = (draft: Draft, next: Item | undefined): boolean =>
  draft.count !== undefined &&
  draft.species !== undefined &&
  next !== undefined &&
  "slot" in next &&
  next.slot === "species";

const namesFish = (item: Item): boolean =>
  "slot" in item ? item.slot === "species" : /^(fish|fishes|one|hooker)$/.test(item.word);

/** A whole number in front of the fish counts them, unless two numbers stand there as a weight. */
function isCount(items: readonly Item[], index: number, named: number): boolean {
  const item = items[index];
  if (!item || !("slot" in item) || item.slot !== "number") return false;
  const neighbours = [items[index - 1], items[index + 1]];
  const paired = neighbours.some((other) => other && "slot" in other && other.slot === "number");
  const before = index < named;
  const ofThem = wordAt(items, index + 1) === "of";
  const pounders = isPounder(items[index + 1]);
  const another = wordAt(items, index - 1) === "another" && item.value <= MOST_BARE_COUNT;
  return (
    (before || ofThem || another || pounders || countsNext(items, index)) &&
    !paired &&
    Number.isInteger(item.value) &&
    item.value > 0
  );
}

/** Whether the number stands right before a named fish, with no more than its qualities between. */
function countsNext(items: readonly Item[], index: number): boolean {
  const next = items.slice(index + 1).find((item) => "slot" in item || !QUALITY.has(item.word));
  return next !== undefined && "slot" in next && next.slot === "species";
}

/** "another three" are three fish; "another forty" is a length. */
const MOST_BARE_COUNT = 12;

/** "two | two pounders". */
const isPounder = (item: Item | undefined): boolean =>
  item !== undefined && "slot" in item && item.slot === "weight" && item.value.ofFish === true;

function wordAt(items: readonly Item[], index: number): string | undefined {
  const item = items[index];
  return item && "word" in item ? item.word : undefined;
}

function takeWeight(
  draft: Draft,
  value: { g: number; unit: NonNullable<Unit["weight"]>; approx?: true },
) {
  draft.weightG = value.g;
  draft.unit.weight = value.unit;
  if (value.approx) draft.approx = true;
}

function takeLength(
  draft: Draft,
  value: { mm: number; unit: NonNullable<Unit["length"]>; approx?: true },
) {
  draft.lengthMm = value.mm;
  draft.unit.length = value.unit;
  if (value.approx) draft.approx = true;
}

/** "about", "foul hooked" and "for the lot" hold for every fish of the phrase. */
function markWords(drafts: readonly Draft[], items: readonly Item[]) {
  const words = ` ${items.map((item) => ("word" in item ? item.word : "<>")).join(" ")} `;
  const says = (phrase: string) => words.includes(` ${phrase.replaceAll("'", "")} `);
  const sized = items.some((item) => "slot" in item && /^(weight|length|number)$/.test(item.slot));
  const approx = sized && [...ABOUT, ...ROUGHLY].some(says);
  const foul = says("foul") || says("fowl");
  const shared = SHARED.some(says);
  for (const draft of drafts) {
    if (approx) draft.approx = true;
    if (foul) draft.foul = true;
    draft.shared = shared;
  }
}

function finish(draft: Draft, doubts: string[]): Fish {
  takeNumbers(draft, doubts);
  const { numbers: _numbers, shared, unit, ...fish } = draft;
  if (shared && fish.weightG !== undefined && fish.count !== undefined) {
    fish.weightG /= fish.count;
    fish.approx = true;
  }
  if (isImplausible(fish)) doubts.push("an unlikely size");
  return unit.weight || unit.length ? { ...fish, unit } : fish;
}

/** Bare numbers: "two eight" is pounds and ounces; one alone is what the fish allows. */
function takeNumbers(draft: Draft, doubts: string[]) {
  const [first, second] = draft.numbers;
  if (first === undefined) return;
  if (second !== undefined && isPoundsAndOunces(first, second) && draft.weightG === undefined) {
    takeWeight(draft, { g: (first * OUNCES_PER_POUND + second) * GRAMS_PER_OUNCE, unit: "lb" });
    return;
  }
  doubts.push("a bare number");
  const value = second === undefined || draft.weightG !== undefined ? first : first * 100 + second;
  if (draft.weightG !== undefined || (Number.isInteger(value) && value > MOST_BARE_POUNDS)) {
    takeLength(draft, { mm: value * 10, unit: "cm" });
  } else {
    takeWeight(draft, likelyWeight(value, draft.species));
  }
}

const isPoundsAndOunces = (pounds: number, ounces: number): boolean =>
  Number.isInteger(pounds) && ounces > 0 && ounces < OUNCES_PER_POUND;

/** More than this, said bare, is a length in centimetres. */
const MOST_BARE_POUNDS = 15;

/** Ounces where as many pounds would make half the largest of its kind. */
function likelyWeight(value: number, species: string | undefined) {
  const most = speciesById.get(species ?? "")?.mostG ?? Number.POSITIVE_INFINITY;
  return value * GRAMS_PER_POUND > most / 2
    ? { g: value * GRAMS_PER_OUNCE, unit: "oz" as const }
    : { g: value * GRAMS_PER_POUND, unit: "lb" as const };
}

/** The largest of any kind, where the kind was not said. */
const MOST_ANY = { mostG: 30_000, mostMm: 1400 };

function isImplausible({ species, weightG = 0, lengthMm = 0 }: Fish): boolean {
  const { mostG, mostMm } = speciesById.get(species ?? "") ?? MOST_ANY;
  return weightG > mostG || lengthMm > mostMm;
}

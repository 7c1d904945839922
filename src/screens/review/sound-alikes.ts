/** Other lines that sound like one that was heard. */
import { LENGTH_WORDS, WEIGHT_WORDS } from "../../../grammar/quantity/units.ts";
import { isQuantityWord } from "../../../grammar/quantity/words.ts";

/** Taken for each other by ears of every sort; as words and as printed. */
const PAIRS: readonly (readonly [string, string])[] = [
  ["thirteen", "thirty"],
  ["fourteen", "forty"],
  ["fifteen", "fifty"],
  ["sixteen", "sixty"],
  ["seventeen", "seventy"],
  ["eighteen", "eighty"],
  ["nineteen", "ninety"],
  ["13", "30"],
  ["14", "40"],
  ["15", "50"],
  ["16", "60"],
  ["17", "70"],
  ["18", "80"],
  ["19", "90"],
];

const TWINS = new Map(
  PAIRS.flatMap(([one, other]) => [[one, other] as const, [other, one] as const]),
);

/** What may have been left out behind a bare number. */
const UNITS = ["ounces", "centimetres"];

const isBareNumber = (word = ""): boolean =>
  /^(\d+|[a-z]+)$/.test(word) &&
  isQuantityWord(word) &&
  !WEIGHT_WORDS.has(word) &&
  !LENGTH_WORDS.has(word);

/** Of a line with more numbers the first few are tried: reading each line takes its time. */
const MOST_TWINS = 6;

/** Lines with one number taken for its twin, then with the unit that a last bare number lacks. */
export function soundAlikes(line: string): string[] {
  const words = line.trim().split(/\s+/);
  const twinned = words.flatMap((word, place) => {
    const twin = TWINS.get(word.toLowerCase());
    return twin === undefined ? [] : [{ place, twin }];
  });
  const twins = twinned
    .slice(0, MOST_TWINS)
    .map(({ place, twin }) => words.with(place, twin).join(" "));
  const bare = [line, ...twins].filter((one) =>
    isBareNumber(one.toLowerCase().split(/\s+/).at(-1)),
  );
  return [...twins, ...bare.flatMap((one) => UNITS.map((unit) => `${one} ${unit}`))];
}

/** A fish in English. */
import type { Amendable, StatementOf } from "../statement.ts";
import { speciesById } from "../vocabulary/species.ts";
import { sayLength, sayNumber, sayWeight } from "./quantities.ts";

/** Species as they are called; one of the angler's own is called what he called it. */
export const sayName = (species: string): string => speciesById.get(species)?.names[0] ?? species;

/** "a tench", "an F1". */
export const sayOne = (species: string): string =>
  `${/^([aeiou]|F1)/i.test(sayName(species)) ? "an" : "a"} ${sayName(species)}`;

/** "3 roach, 6 ounces each", "carp, about 2 pounds, 40 centimetres, foul hooked". */
export function fishParts(fish: Omit<StatementOf<"fish">, "kind"> | Amendable): string[] {
  const { species, weightG, lengthMm, count, approx, foul, unit } = fish;
  const about = approx ? "about " : "";
  const each = count !== undefined && count > 1 ? " each" : "";
  const called = species && sayName(species);
  return [
    count === undefined ? called : `${sayNumber(count)} ${called ?? "fish"}`,
    weightG === undefined ? undefined : `${about}${sayWeight(weightG, unit?.weight)}${each}`,
    lengthMm === undefined
      ? undefined
      : `${weightG === undefined ? about : ""}${sayLength(lengthMm, unit?.length)}`,
    foul && "foul hooked",
  ].filter((part): part is string => typeof part === "string");
}

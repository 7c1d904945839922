/**
 * Length-weight relations by species, for anglers' lengths: nose to the tail's end (TL).
 *
 * Bream, roach and perch: least squares over the Längelmävesi catch (Debian package r-cran-rrcov,
 * `data(fish)`). Carp: standard weight of Bister 2000, as listed in the R package FSA; it is the
 * 75th percentile, which suits fed fish. Tench: Balık 2009, to the fork, which a tench's tail
 * hardly has. All others from memory, hence their wide spread.
 */
import { fromStandardWeight, type Relation } from "./relation.ts";

/** Spread of ln W where the source states none; a choice of our own, twice the measured ones. */
const READ_SPREAD = 0.2;
const MEMORY_SPREAD = 0.3;

const measured = (a: number, b: number, spread: number): Relation => ({
  a,
  b,
  lengthType: "TL",
  spread,
});
const fromMemory = (a: number, b: number): Relation => measured(a, b, MEMORY_SPREAD);

const bream = measured(0.0071422005, 3.1092756, 0.0917);
const crucian = fromMemory(0.015, 3.05);

/** By species. Those not named here have none, and their weights are not worked out. */
export const RELATIONS: Readonly<Record<string, Relation>> = {
  bream,
  // A skimmer is a young bream.
  skimmer: bream,
  roach: measured(0.0065702003, 3.1081514, 0.1089),
  perch: measured(0.0062271263, 3.1626878, 0.1157),
  carp: { ...fromStandardWeight(-4.639, 2.92), lengthType: "TL", spread: READ_SPREAD },
  tench: { a: 0.0151, b: 2.9993, lengthType: "FL", spread: READ_SPREAD },
  crucian,
  // A cross of carp and crucian, taken for the deeper of the two.
  f1: crucian,
  ide: fromMemory(0.0085, 3.1),
  barbel: fromMemory(0.0087, 3),
  rudd: fromMemory(0.0087, 3.12),
};

/** The relation of a species by its name in the log, or undefined for one without a source. */
export const relationOf = (species: string | undefined): Relation | undefined =>
  species !== undefined && Object.hasOwn(RELATIONS, species) ? RELATIONS[species] : undefined;

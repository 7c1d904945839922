/** What a session came to: one model, from which every form of sharing is made. */
import type { StatementOf } from "../../grammar/statement.ts";
import { type Spell, spellsOf } from "../analysis/effort/spells.ts";
import { fishedStretches, lengthOf } from "../analysis/effort/stretches.ts";
import { groupBy } from "../analysis/group.ts";
import type { Plan } from "../log/event.ts";
import type { Entry, Net, Session, SetUp } from "../log/session.ts";
import type { Allowed } from "./allowed.ts";

type Fish = StatementOf<"fish">;

/** Fish counted and weighed; grams are of those that have a weight. */
export interface Tally {
  count: number;
  spokenG: number;
  unweighed: number;
}

export interface Tried extends Tally {
  setUp: SetUp;
  /** Milliseconds fished with it, pauses out. */
  fishedMs: number;
}

export interface Summary extends Tally {
  place: { water?: string; peg?: string; method?: NonNullable<Plan["method"]> };
  /** Milliseconds since the epoch; absent where the session has not started, or not ended. */
  startedAt?: number;
  endedAt?: number;
  /** Milliseconds, pauses out. */
  fishedMs: number;
  species: (Tally & { species?: string })[];
  /** The heaviest single fish, else the longest. */
  best?: Fish;
  /** By cause, and by sort; the commonest first. */
  losses: { value: StatementOf<"loss">["cause"]; count: number }[];
  signs: { value: StatementOf<"sign">["sort"]; count: number }[];
  drops: number;
  /** In order of first use; only those that were fished. */
  setUps: Tried[];
  nets: readonly Net[];
  /** What was noted before the day, which has no time, and during it. */
  notes: { at?: number; text: string }[];
  /** Entries that still wait for a look. */
  toCheck: number;
}

/** @param now milliseconds since the epoch: how far a session that still lasts has got */
export function summarise(session: Session, now: number): Summary {
  const { plan, count, spokenG, unweighed, startedAt, endedAt, entries, nets } = session;
  const { water, peg, method } = plan;
  const best = bestOf(fishOf(entries));
  return {
    place: { ...(water && { water }), ...(peg && { peg }), ...(method && { method }) },
    ...(startedAt !== undefined && { startedAt }),
    ...(endedAt !== undefined && { endedAt }),
    fishedMs: lengthOf(fishedStretches(session, now)),
    count,
    spokenG,
    unweighed,
    species: bySpecies(entries),
    ...(best && { best }),
    losses: tallied(statements(entries, "loss").map(({ cause }) => cause)),
    signs: tallied(statements(entries, "sign").map(({ sort }) => sort)),
    drops: statements(entries, "drop").length,
    setUps: bySetUp(spellsOf(session, now)),
    nets,
    notes: notesOf(session),
    toCheck: entries.filter(({ verdict }) => verdict === "check").length,
  };
}

/** The same, without what the angler keeps to himself. */
export function allowedOf(summary: Summary, allowed: Allowed): Summary {
  const { water, peg, method } = summary.place;
  return {
    ...summary,
    place: {
      ...(allowed.water && water && { water }),
      ...(allowed.peg && peg && { peg }),
      ...(method && { method }),
    },
    notes: allowed.notes ? summary.notes : [],
  };
}

function notesOf({ plan, entries }: Session): Summary["notes"] {
  const before = plan.notes ? [{ text: plan.notes }] : [];
  const during = entries.flatMap(({ at, statement }) =>
    statement.kind === "note" ? [{ at, text: statement.text }] : [],
  );
  return [...before, ...during];
}

const statements = <K extends Entry["statement"]["kind"]>(
  entries: readonly Entry[],
  kind: K,
): StatementOf<K>[] =>
  entries.flatMap(({ statement }) =>
    statement.kind === kind ? [statement as StatementOf<K>] : [],
  );

const fishOf = (entries: readonly Entry[]): Fish[] => statements(entries, "fish");

const tallyOf = (fish: readonly Fish[]): Tally =>
  fish.reduce(
    ({ count, spokenG, unweighed }, { weightG, count: more = 1 }) => ({
      count: count + more,
      spokenG: spokenG + (weightG ?? 0) * more,
      unweighed: unweighed + (weightG === undefined ? more : 0),
    }),
    { count: 0, spokenG: 0, unweighed: 0 },
  );

/** Fish by species, the most first; one not named has no species. */
export const bySpecies = (entries: readonly Entry[]): Summary["species"] =>
  [...groupBy(fishOf(entries), ({ species }) => species)]
    .map(([species, fish]) => ({ ...(species !== undefined && { species }), ...tallyOf(fish) }))
    .sort((a, b) => b.count - a.count || b.spokenG - a.spokenG);

function bestOf(fish: readonly Fish[]): Fish | undefined {
  const size = ({ weightG = 0, lengthMm = 0 }: Fish) => [weightG, lengthMm] as const;
  const sized = fish.filter((one) => one.weightG !== undefined || one.lengthMm !== undefined);
  return sized.reduce<Fish | undefined>((best, one) => {
    if (!best) return one;
    const [[g, mm], [bestG, bestMm]] = [size(one), size(best)];
    return g > bestG || (g === bestG && mm > bestMm) ? one : best;
  }, undefined);
}

/** How often each value comes, the commonest first. */
const tallied = <T>(values: readonly T[]): { value: T; count: number }[] =>
  [...groupBy(values, (value) => value)]
    .map(([value, same]) => ({ value, count: same.length }))
    .sort((a, b) => b.count - a.count);

/** Spells of the same set-up together, wherever they lie in the day. */
const bySetUp = (spells: readonly Spell[]): Tried[] =>
  [...groupBy(spells, ({ setUp }) => JSON.stringify(Object.entries(setUp).sort())).values()]
    .map((same) => ({
      setUp: same[0]?.setUp ?? {},
      fishedMs: same.reduce((sum, { fishedMs }) => sum + fishedMs, 0),
      ...tallyOf(same.flatMap(({ entries }) => fishOf(entries))),
    }))
    .filter(({ fishedMs, count }) => fishedMs > 0 || count > 0);

/** A session cut into spells of one unchanged set-up. */
import type { Entry, Session, SetUp } from "../../log/session.ts";
import { clip, fishedStretches, lengthOf, type Stretch } from "./stretches.ts";

export interface Spell {
  setUp: SetUp;
  /** Fished time, pauses out; empty for what was logged after the end. */
  stretches: readonly Stretch[];
  /** Milliseconds fished. */
  fishedMs: number;
  /** What happened in it, in order of time. */
  entries: readonly Entry[];
}

interface Cut {
  at: number;
  setUp: SetUp;
  entries: Entry[];
}

/** Written as a record, so that a field added to the set-up cannot be forgotten here. */
const FIELDS = Object.keys({
  rig: true,
  depthMm: true,
  distanceMm: true,
  hook: true,
  bait: true,
  baitNote: true,
  lashMm: true,
} satisfies Record<keyof SetUp, true>) as (keyof SetUp)[];

const sameSetUp = (one: SetUp, other: SetUp): boolean =>
  one === other || FIELDS.every((field) => one[field] === other[field]);

/**
 * The spells of a session up to `now` (milliseconds since the epoch), in order of time. Further cuts
 * at `times` (ascending) end a spell without a change of set-up. Every entry is in exactly one spell,
 * also one logged in a pause or after the end; a session that has not started has no spells.
 */
export function spellsOf(session: Session, now: number, times: readonly number[] = []): Spell[] {
  const { startedAt } = session;
  if (startedAt === undefined) return [];
  let current: Cut = {
    at: startedAt,
    setUp: session.entries[0]?.setUp ?? session.setUp,
    entries: [],
  };
  const cuts = [current];
  const open = (at: number, setUp: SetUp) => {
    current = { at: Math.max(at, startedAt), setUp, entries: [] };
    cuts.push(current);
  };
  let next = 0;
  const cutUpTo = (at: number) => {
    for (let time = times[next]; time !== undefined && time <= at; time = times[++next]) {
      open(time, current.setUp);
    }
  };
  for (const entry of session.entries) {
    cutUpTo(entry.at);
    if (!sameSetUp(current.setUp, entry.setUp)) open(entry.at, entry.setUp);
    current.entries.push(entry);
  }
  cutUpTo(session.endedAt ?? now);
  return closed(cuts, fishedStretches(session, now));
}

/** Each cut lasts until the next; those with neither time nor entries are of no use to anybody. */
const closed = (cuts: readonly Cut[], fished: readonly Stretch[]): Spell[] =>
  cuts
    .map(({ at, setUp, entries }, place) => {
      const stretches = clip(fished, at, cuts[place + 1]?.at ?? Number.POSITIVE_INFINITY);
      return { setUp, stretches, fishedMs: lengthOf(stretches), entries };
    })
    .filter((spell) => spell.fishedMs > 0 || spell.entries.length > 0);

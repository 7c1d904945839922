/** What a correction does to the fish that it is not about. */
import { fishIn } from "./catch.ts";
import { same } from "./correction.ts";
import type { Entry, Session, SetUp } from "./session.ts";

/** The parts of a set-up that change together, and the net. */
const PARTS = {
  rig: ({ setUp }) => pick(setUp, ["rig"]),
  depth: ({ setUp }) => pick(setUp, ["depthMm"]),
  distance: ({ setUp }) => pick(setUp, ["distanceMm"]),
  hook: ({ setUp }) => pick(setUp, ["hook"]),
  bait: ({ setUp }) => pick(setUp, ["bait", "baitNote"]),
  lash: ({ setUp }) => pick(setUp, ["lashMm"]),
  net: ({ net }) => ({ net }),
} as const satisfies Record<string, (entry: Entry) => Partial<SetUp> | { net: number }>;

export type AlteredPart = keyof typeof PARTS;
export type PartValue = Partial<SetUp> & { net?: number };

/** One part of the set-up, or the net, that fish move from and to. Absent fields were never said. */
export interface Alteration {
  part: AlteredPart;
  from: PartValue;
  to: PartValue;
  /** The numbers the fish have before, in order. */
  fish: readonly number[];
}

/**
 * Which fish would have been caught on another set-up, or be in another net.
 * @param after the same session corrected
 */
export function alterations(before: Session, after: Session): Alteration[] {
  const later = new Map(after.entries.map((entry) => [entry.id, entry]));
  const found = new Map<string, Alteration & { fish: number[] }>();
  for (const entry of before.entries) {
    const moved = later.get(entry.id);
    if (entry.statement.kind !== "fish" || !moved || moved.statement.kind !== "fish") continue;
    for (const part of Object.keys(PARTS) as AlteredPart[]) {
      const [from, to] = [PARTS[part](entry), PARTS[part](moved)];
      if (same(from, to)) continue;
      const key = JSON.stringify([part, from, to]);
      const one = found.get(key) ?? { part, from, to, fish: [] as number[] };
      one.fish.push(...numbersOf(entry));
      found.set(key, one);
    }
  }
  return [...found.values()];
}

/** All numbers that an entry of fish has in its session; none for what is no fish. */
export function numbersOf({ fishNumber, statement }: Entry): number[] {
  if (fishNumber === undefined || statement.kind !== "fish") return [];
  return Array.from({ length: fishIn(statement) }, (_, n) => fishNumber + n);
}

const pick = (setUp: SetUp, names: readonly (keyof SetUp)[]): Partial<SetUp> =>
  Object.fromEntries(
    names.filter((name) => setUp[name] !== undefined).map((name) => [name, setUp[name]]),
  );

/** In which order the pegs are shown. */
import type { BoardRow } from "../app/board.ts";

export const ORDERS = ["peg", "section", "weight"] as const;
export type Order = (typeof ORDERS)[number];

export interface Group {
  /** Undefined where all stand in one list, or for those who named none. */
  section: string | undefined;
  rows: readonly BoardRow[];
}

/** In lists; by section each is a list of its own, the heaviest first. */
export function grouped(rows: readonly BoardRow[], order: Order): Group[] {
  if (order !== "section") return [{ section: undefined, rows: sorted(rows, order) }];
  const sections = new Map<string | undefined, BoardRow[]>();
  for (const row of rows) {
    const section = row.standing?.section;
    sections.set(section, [...(sections.get(section) ?? []), row]);
  }
  return [...sections]
    .map(([section, ofSection]) => ({ section, rows: sorted(ofSection, "weight") }))
    .sort((one, other) => byKey(nameKey(one.section), nameKey(other.section)));
}

function sorted(rows: readonly BoardRow[], order: "peg" | "weight"): BoardRow[] {
  const keys = new Map(rows.map((row) => [row, pegKey(row)]));
  const keyOf = (row: BoardRow) => keys.get(row) ?? NO_NAME;
  const byPeg = (one: BoardRow, other: BoardRow) => byKey(keyOf(one), keyOf(other));
  const byWeight = (one: BoardRow, other: BoardRow) => gramsOf(other) - gramsOf(one);
  return [...rows].sort((one, other) =>
    order === "weight" ? byWeight(one, other) || byPeg(one, other) : byPeg(one, other),
  );
}

const gramsOf = ({ bag }: BoardRow): number => (bag.tells ? bag.value : bag.lower);

/** Letters, a number, and the rest: "A9" stands before "A10". What has no name comes last. */
type Key = readonly [isNamed: number, before: string, number: number, after: string];

const NO_NAME: Key = [1, "", 0, ""];

function nameKey(name: string | undefined): Key {
  const [, before = "", number = "", after = ""] = /^(\D*)(\d*)(.*)$/s.exec(name ?? "") ?? [];
  return name === undefined ? NO_NAME : [0, before.toLowerCase(), Number(number), after];
}

/** Who named no peg stands behind those who did, by name or seat. */
function pegKey({ seat, standing }: BoardRow): Key {
  if (standing?.peg !== undefined) return nameKey(standing.peg);
  const [, ...rest] = nameKey(standing?.name ?? seat);
  return [1, ...rest];
}

/** Not by locale, which is slow on long lists and differs from phone to phone. */
function byKey(one: Key, other: Key): number {
  for (const [place, part] of one.entries()) {
    const against = other[place];
    if (against === undefined || part === against) continue;
    return part < against ? -1 : 1;
  }
  return 0;
}

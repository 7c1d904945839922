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
    const ofSection = sections.get(section);
    if (ofSection) ofSection.push(row);
    else sections.set(section, [row]);
  }
  return [...sections]
    .map(([section, ofSection]) => ({ section, rows: sorted(ofSection, "weight") }))
    .sort((one, other) => compared(nameKey(one.section), nameKey(other.section)));
}

function sorted(rows: readonly BoardRow[], order: "peg" | "weight"): BoardRow[] {
  const keyed = rows.map((row) => ({ row, key: pegKey(row), grams: gramsOf(row) }));
  keyed.sort(
    (one, other) =>
      (order === "weight" ? other.grams - one.grams : 0) || compared(one.key, other.key),
  );
  return keyed.map(({ row }) => row);
}

const gramsOf = ({ bag }: BoardRow): number => (bag.tells ? bag.value : bag.lower);

const NO_NAME = "2";
/** More digits than any peg's number has. */
const DIGITS = 12;

/** Sorts letters, then a number, then the rest: "A9" stands before "A10". What has no name comes last. */
function nameKey(name: string | undefined, first = "0"): string {
  if (name === undefined) return NO_NAME;
  const [, before = "", number = "", after = ""] = /^(\D*)(\d*)(.*)$/s.exec(name) ?? [];
  return `${first}${before.toLowerCase()} ${number.padStart(DIGITS, "0")}${after}`;
}

/** Who named no peg stands behind those who did, by name or seat. */
const pegKey = ({ seat, standing }: BoardRow): string =>
  standing?.peg === undefined ? nameKey(standing?.name ?? seat, "1") : nameKey(standing.peg);

/** Not by locale, which is slow on long lists and differs from phone to phone. */
function compared(one: string, other: string): number {
  if (one === other) return 0;
  return one < other ? -1 : 1;
}

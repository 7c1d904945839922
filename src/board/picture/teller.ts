/** Carries a view from where it is worked out to where it is shown, without telling the same twice. */
import type { BoardPicture } from "./picture.ts";
import { type BoardRow, type BoardView, bySeat, type Pooled } from "./view.ts";

/** What changed: rows that are new or look otherwise, and the rest as it is now; `pooled` seldom. */
export type Patch = Omit<BoardView, "pooled"> & Partial<Pick<BoardView, "pooled">>;

/** What all pegs together say need not be as fresh as what one does. */
const POOL_EVERY_MS = 10_000;

export class Teller {
  readonly #picture: BoardPicture;
  /** How each row was last told. */
  readonly #told = new Map<string, { row: BoardRow; text: string }>();
  #pooledAt = Number.NEGATIVE_INFINITY;

  constructor(picture: BoardPicture) {
    this.#picture = picture;
  }

  /** The first tells all. @param now by the board's clock, milliseconds since the epoch */
  tell(now: number): Patch {
    const standing = this.#picture.standing(now);
    const patch = { ...standing, rows: standing.rows.filter((row) => this.#isNews(row)) };
    if (now - this.#pooledAt < POOL_EVERY_MS) return patch;
    this.#pooledAt = now;
    return { ...patch, pooled: this.#picture.pooled(now) };
  }

  #isNews(row: BoardRow): boolean {
    const told = this.#told.get(row.seat);
    if (told?.row === row) return false;
    const text = JSON.stringify(row);
    this.#told.set(row.seat, { row, text });
    return told?.text !== text;
  }
}

/**
 * The view after a patch; rows that it does not name are the same objects as before. Costs next to
 * nothing where few of many rows are told.
 */
export function patched(before: BoardView | undefined, patch: Patch): BoardView {
  const pooled = patch.pooled ?? before?.pooled ?? NOTHING_POOLED;
  if (!before) return { ...patch, pooled };
  if (patch.rows.length === 0) return { ...patch, pooled, rows: before.rows };
  const rows = [...before.rows];
  const added: BoardRow[] = [];
  for (const row of patch.rows) {
    const place = placeOf(row.seat, before.rows);
    if (place === undefined) added.push(row);
    else rows[place] = row;
  }
  return { ...patch, pooled, rows: added.length === 0 ? rows : [...rows, ...added].sort(bySeat) };
}

const NOTHING: Pooled = { verdict: "too-few", ranked: [] };
const NOTHING_POOLED: BoardView["pooled"] = { depth: NOTHING, bait: NOTHING, rig: NOTHING };

/** Where a seat's row stands among rows in the order of their seats. */
function placeOf(seat: string, rows: readonly BoardRow[]): number | undefined {
  let [from, to] = [0, rows.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((rows[middle]?.seat ?? "") < seat) from = middle + 1;
    else to = middle;
  }
  return rows[from]?.seat === seat ? from : undefined;
}

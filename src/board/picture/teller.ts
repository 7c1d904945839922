/** Carries a view from where it is worked out to where it is shown, without telling the same twice. */
import type { BoardPicture } from "./picture.ts";
import { type BoardRow, type BoardView, bySeat } from "./view.ts";

/** What changed: rows that are new or look otherwise, and the rest as it is now. */
export type Patch = BoardView;

export class Teller {
  readonly #picture: BoardPicture;
  /** How each row was last told. */
  readonly #told = new Map<string, string>();

  constructor(picture: BoardPicture) {
    this.#picture = picture;
  }

  /** @param now by the board's clock, milliseconds since the epoch */
  tell(now: number): Patch {
    const view = this.#picture.view(now);
    return { ...view, rows: view.rows.filter((row) => this.#isNews(row)) };
  }

  #isNews(row: BoardRow): boolean {
    const text = JSON.stringify(row);
    if (this.#told.get(row.seat) === text) return false;
    this.#told.set(row.seat, text);
    return true;
  }
}

/**
 * The view after a patch; rows that it does not name are the same objects as before. Costs next to
 * nothing where few of many rows are told.
 */
export function patched(before: BoardView | undefined, patch: Patch): BoardView {
  if (!before) return patch;
  if (patch.rows.length === 0) return { ...patch, rows: before.rows };
  const rows = [...before.rows];
  const added: BoardRow[] = [];
  for (const row of patch.rows) {
    const place = placeOf(row.seat, before.rows);
    if (place === undefined) added.push(row);
    else rows[place] = row;
  }
  return { ...patch, rows: added.length === 0 ? rows : [...rows, ...added].sort(bySeat) };
}

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

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

/** The view after a patch; rows that it does not name are the same objects as before. */
export function patched(before: BoardView | undefined, patch: Patch): BoardView {
  if (!before) return patch;
  if (patch.rows.length === 0) return { ...patch, rows: before.rows };
  const rows = new Map(before.rows.map((row) => [row.seat, row]));
  for (const row of patch.rows) rows.set(row.seat, row);
  const isSame = rows.size === before.rows.length;
  const list = [...rows.values()];
  return { ...patch, rows: isSame ? list : list.sort(bySeat) };
}

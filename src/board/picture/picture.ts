/** From a board's messages to what it shows. */
import { groupBy } from "../../analysis/group.ts";
import { bestOverTrials } from "../../analysis/seasons/over-sessions.ts";
import type { Receive } from "../reader.ts";
import { ranked } from "./ranks.ts";
import { type PeggedRow, rowOf } from "./row.ts";
import { Seat } from "./seat.ts";
import { type BoardRow, type BoardView, bySeat, type Pooled, type PooledFactor } from "./view.ts";

/** Rates and hours go on in steps of this: what nobody would see need not be worked out. */
const TICK_MS = 10_000;

/** Of the levels of a factor those a reader can take in; our own choice. */
const MOST_NAMED = 5;

/**
 * Takes a board's messages one by one: late, repeated and in any order they give the same view. One
 * that comes in its turn costs the same however much was said before; a correction, or one that came
 * late, has its own session walked again once, when it is next looked at.
 */
export class BoardPicture {
  readonly #seats = new Map<string, Seat>();
  readonly #damaged = new Set<number>();
  /** Each row as it was worked out last, and of what. */
  readonly #rows = new Map<string, { row: PeggedRow; tick: number; changes: number }>();
  #newest = Number.NEGATIVE_INFINITY;

  readonly receive: Receive = ({ seat, place, at }, message) => {
    this.#newest = Math.max(this.#newest, at);
    if (message) this.#seatOf(seat).take(at, message);
    else this.#damaged.add(place);
  };

  /** How far the board's clock is ahead of a seat's phone, milliseconds; undefined until it wrote. */
  aheadOf(seat: string): number | undefined {
    return this.#seats.get(seat)?.ahead;
  }

  /**
   * How the board stands; the rows in order of their seats' names.
   * @param now by the board's clock, milliseconds since the epoch; what it took is never later
   */
  view(now: number): BoardView {
    return { ...this.standing(now), pooled: this.pooled(now) };
  }

  /** The same without what all pegs together say, which costs the most and changes least. */
  standing(now: number): Omit<BoardView, "pooled"> {
    const at = Math.max(now, this.#newest);
    return { at, rows: withRanks(this.#rowsAt(at)), damaged: this.#damaged.size };
  }

  /** What all pegs together say. */
  pooled(now: number): BoardView["pooled"] {
    return pooledFrom(this.#rowsAt(Math.max(now, this.#newest)));
  }

  /** Only rows of seats that wrote are worked out anew, and with each tick all of them. */
  #rowsAt(at: number): PeggedRow[] {
    const tick = Math.ceil(at / TICK_MS) * TICK_MS;
    const rows = [...this.#seats].map(([name, seat]) => {
      const known = this.#rows.get(name);
      if (known?.changes === seat.changes && known.tick === tick) return known.row;
      const row = rowOf(name, seat, tick);
      this.#rows.set(name, { row, tick, changes: seat.changes });
      return row;
    });
    return rows.sort((one, other) => bySeat(one.row, other.row));
  }

  #seatOf(name: string): Seat {
    const known = this.#seats.get(name);
    if (known) return known;
    const seat = new Seat();
    this.#seats.set(name, seat);
    return seat;
  }
}

/** Where any seat names a section, or any session was set up as a match, all are ranked. */
function withRanks(rows: readonly PeggedRow[]): BoardRow[] {
  const isMatch = rows.some(({ row, isMatch }) => isMatch || row.standing?.section !== undefined);
  if (!isMatch) return rows.map(({ row }) => row);
  const overall = ranked(rows);
  const bySection = groupBy(rows, ({ row }) => row.standing?.section);
  const inSection = new Map(
    [...bySection].flatMap(([name, ofSection]) =>
      name === undefined ? [] : [...ranked(ofSection)],
    ),
  );
  return rows.map((one) => {
    const rank = overall.get(one);
    return rank ? { ...one.row, ranks: { section: inSection.get(one), overall: rank } } : one.row;
  });
}

function pooledFrom(rows: readonly PeggedRow[]): Record<PooledFactor, Pooled> {
  const pool = (factor: PooledFactor): Pooled => {
    const { verdict, ranked } = bestOverTrials(
      rows.flatMap(({ trials }) => trials?.[factor] ?? []),
    );
    return { verdict, ranked: ranked.slice(0, MOST_NAMED) };
  };
  return { depth: pool("depth"), bait: pool("bait"), rig: pool("rig") };
}

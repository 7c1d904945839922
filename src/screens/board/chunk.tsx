import { Component, type RefCallback } from "preact";
import type { BoardRow } from "../app/board.ts";
import type { Settings } from "../app.ts";
import { Row } from "./row.tsx";
import { minutesSince, whoText } from "./row-words.ts";

interface ChunkProps {
  name: string;
  rows: readonly BoardRow[];
  /** By the board's clock, milliseconds since the epoch. */
  at: number;
  settings: Settings;
  /** In sight or nearly so; in others only the names stand, to be found and jumped to. */
  isNear: boolean;
  follow: RefCallback<HTMLElement>;
}

/**
 * Some rows that come into sight together. Whatever happens on a thousand pegs, only what is near is
 * drawn anew.
 */
export class Chunk extends Component<ChunkProps> {
  override shouldComponentUpdate(next: ChunkProps): boolean {
    return next.isNear || this.props.isNear || !haveSameNames(next.rows, this.props.rows);
  }

  override render({ name, rows, at, settings, isNear, follow }: ChunkProps) {
    return (
      <ul class="board-rows" data-name={name} ref={follow}>
        {rows.map((row) =>
          isNear ? (
            <Row
              key={row.seat}
              {...{ row, settings }}
              sinceFish={row.lastFishAt && minutesSince(at, row.lastFishAt)}
              quiet={minutesSince(at, row.heardAt)}
            />
          ) : (
            <li key={row.seat}>
              <h3>{whoText(row)}</h3>
            </li>
          ),
        )}
      </ul>
    );
  }
}

const haveSameNames = (some: readonly BoardRow[], others: readonly BoardRow[]): boolean =>
  some.length === others.length &&
  some.every((one, place) => {
    const other = others[place];
    return one === other || (other?.seat === one.seat && whoText(other) === whoText(one));
  });

import { Component } from "preact";
import { Figure } from "../../ui/figure.tsx";
import type { BoardRow } from "../app/board.ts";
import type { Settings } from "../app.ts";
import {
  caughtText,
  likelyText,
  rankText,
  rateText,
  setUpWords,
  stateText,
  weightText,
  whoText,
} from "./row-words.ts";

interface RowProps {
  row: BoardRow;
  /** Minutes since the last fish, and without a word. */
  sinceFish: number | undefined;
  quiet: number;
  settings: Settings;
}

/** One peg, drawn anew only when it has to look otherwise. */
export class Row extends Component<RowProps> {
  override shouldComponentUpdate(next: RowProps): boolean {
    const { row, sinceFish, quiet, settings } = this.props;
    return (
      next.row !== row ||
      next.sinceFish !== sinceFish ||
      next.quiet !== quiet ||
      next.settings !== settings
    );
  }

  override render({ row, sinceFish, quiet, settings }: RowProps) {
    return (
      <li class="ticket board-row">
        <h3>{whoText(row)}</h3>
        <p class="board-weight">
          <Figure text={weightText(row, settings)} /> <span>{likelyText(row, settings)}</span>
        </p>
        <p>{caughtText(row, sinceFish)}</p>
        <p>{rateText(row)}</p>
        <p>{setUpWords(row, settings)}</p>
        <State row={row} quiet={quiet} />
      </li>
    );
  }
}

function State({ row, quiet }: Pick<RowProps, "row" | "quiet">) {
  const state = stateText(row, quiet);
  const rank = rankText(row);
  return (
    <p>
      {state && <strong>{state}</strong>}
      {state && rank && " "}
      {rank}
    </p>
  );
}

import { useMemo } from "preact/hooks";
import { Figure } from "../../ui/figure.tsx";
import type { BoardRow } from "../app/board.ts";
import type { Settings } from "../app.ts";
import {
  caughtText,
  likelyText,
  minutesSince,
  rankText,
  rateText,
  setUpWords,
  stateText,
  weightText,
  whoText,
} from "./row-words.ts";

interface RowProps {
  row: BoardRow;
  /** By the board's clock, milliseconds since the epoch. */
  at: number;
  settings: Settings;
}

/** One peg. Its text is made anew only when the row has changed, or another minute has gone by. */
export function Row({ row, at, settings }: RowProps) {
  const minutes = row.lastFishAt === undefined ? undefined : minutesSince(at, row.lastFishAt);
  const quiet = minutesSince(at, row.heardAt);
  return useMemo(
    () => <RowText row={row} minutes={minutes} quiet={quiet} settings={settings} />,
    [row, minutes, quiet, settings],
  );
}

interface RowTextProps {
  row: BoardRow;
  minutes: number | undefined;
  quiet: number;
  settings: Settings;
}

function RowText({ row, minutes, quiet, settings }: RowTextProps) {
  const state = stateText(row, quiet);
  return (
    <li class="ticket board-row">
      <h3>{whoText(row)}</h3>
      <p class="board-weight">
        <Figure text={weightText(row, settings)} /> <span>{likelyText(row, settings)}</span>
      </p>
      <p>{caughtText(row, minutes)}</p>
      <p>{rateText(row)}</p>
      <p>{setUpWords(row, settings)}</p>
      <p class="board-state">
        {state && <strong>{state}</strong>} <span>{rankText(row)}</span>
      </p>
    </li>
  );
}

/** Tables in Markdown. */
import { type Bin, type Call, calibration, shareOf, type Try } from "./tally.ts";

export type Row = readonly (string | number)[];

export const table = (head: Row, rows: readonly Row[]): string =>
  [head, head.map((_, place) => (place === 0 ? "---" : "---:")), ...rows]
    .map((cells) => `| ${cells.join(" | ")} |`)
    .join("\n");

export const percent = (share: number): string =>
  Number.isNaN(share) ? "–" : `${(100 * share).toFixed(1)}`;

/** In how many of a hundred the limits held; a dash where there were none. */
export const heldIn = (tries: readonly Try[] = []): string =>
  percent(shareOf(tries, ({ held }) => held));

export const namedIn = (tries: readonly Try[] = []): string =>
  heldIn(tries.filter(({ named }) => named));

/** The chances told in tenths, each with what came of it. */
export const calibrationTable = (columns: Readonly<Record<string, readonly Call[]>>): string => {
  const names = Object.keys(columns);
  const bins = names.map((name) => calibration(columns[name] ?? []));
  const tenths = Array.from({ length: 10 }, (_, place) => place / 10);
  return table(
    ["told, in 100", ...names],
    tenths.map((from) => [
      `${Math.round(100 * from)}–${Math.round(100 * from) + 10}`,
      ...bins.map((column) => toldAndCame(column.find((bin) => bin.from === from))),
    ]),
  );
};

/** The mean chance told in a bin, how often it came, and of how many calls. */
export const toldAndCame = (bin: Bin | undefined): string =>
  bin ? `${Math.round(100 * bin.told)} → ${Math.round(100 * bin.came)} (${bin.calls})` : "–";

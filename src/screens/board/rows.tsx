import { useSignal } from "@preact/signals";
import { useMemo } from "preact/hooks";
import { Choices } from "../../ui/choices.tsx";
import { boardWords } from "../../words/board.ts";
import type { BoardView } from "../app/board.ts";
import type { Settings } from "../app.ts";
import { Chunk } from "./chunk.tsx";
import { useNear } from "./near.ts";
import { grouped, ORDERS, type Order } from "./order.ts";

/** About two screenfuls of a phone. */
const CHUNK = 10;

interface RowsProps {
  view: BoardView;
  settings: Settings;
}

/** All pegs, in the order that was asked for. */
export function Rows({ view: { rows, at }, settings }: RowsProps) {
  const order = useSignal<Order>("peg");
  const hasSections = rows.some(({ standing }) => standing?.section !== undefined);
  const isMatch = rows.some(({ ranks }) => ranks !== undefined);
  const near = useNear();
  const groups = useMemo(() => grouped(rows, order.value), [rows, order.value]);
  return (
    <>
      <Choices
        label={boardWords.order.label}
        options={ORDERS.filter((one) => one !== "section" || hasSections).map((value) => ({
          value,
          name: boardWords.order[value],
        }))}
        value={order.value}
        onChange={(value) => {
          order.value = value;
        }}
      />
      {isMatch && <p>{boardWords.match}</p>}
      {groups.map(({ section, rows: ofGroup }, group) => (
        <section class="stack" key={section ?? ""} aria-label={titleOf(section, order.value)}>
          <h2>{titleOf(section, order.value)}</h2>
          <div>
            {chunksOf(ofGroup).map((rows, place) => {
              const name = `${section ?? ""} ${place}`;
              return (
                <Chunk
                  key={name}
                  {...{ name, rows, at, settings, follow: near.follow }}
                  isNear={near.has(name) || (place === 0 && group === 0)}
                />
              );
            })}
          </div>
        </section>
      ))}
    </>
  );
}

function chunksOf<T>(rows: readonly T[]): T[][] {
  const count = Math.ceil(rows.length / CHUNK);
  return Array.from({ length: count }, (_, n) => rows.slice(n * CHUNK, (n + 1) * CHUNK));
}

function titleOf(section: string | undefined, order: Order): string {
  if (order !== "section") return boardWords.rows;
  return section === undefined ? boardWords.noSection : boardWords.section(section);
}

import { useSignal } from "@preact/signals";
import { useMemo } from "preact/hooks";
import { Choices } from "../../ui/choices.tsx";
import { boardWords } from "../../words/board.ts";
import type { BoardView } from "../app/board.ts";
import type { Settings } from "../app.ts";
import { grouped, ORDERS, type Order } from "./order.ts";
import { Row } from "./row.tsx";

interface RowsProps {
  view: BoardView;
  settings: Settings;
}

/** All pegs, in the order that was asked for. */
export function Rows({ view: { rows, at }, settings }: RowsProps) {
  const order = useSignal<Order>("peg");
  const hasSections = rows.some(({ standing }) => standing?.section !== undefined);
  const isMatch = rows.some(({ ranks }) => ranks !== undefined);
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
      {groups.map(({ section, rows: ofGroup }) => (
        <section class="stack" key={section ?? ""} aria-label={titleOf(section, order.value)}>
          <h2>{titleOf(section, order.value)}</h2>
          <ul class="board-rows">
            {ofGroup.map((row) => (
              <Row key={row.seat} row={row} at={at} settings={settings} />
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}

function titleOf(section: string | undefined, order: Order): string {
  if (order !== "section") return boardWords.rows;
  return section === undefined ? boardWords.noSection : boardWords.section(section);
}

import { IdbOutbox } from "../../log/idb-outbox.ts";
import { LOG_NAME } from "../../log/log-name.ts";
import type { Desks } from "../desks.ts";
import type { BoardSignals } from "./later-board.ts";
import { SharedBoard } from "./shared-board.ts";

/** The board of the angler's own log, with sending and reading done in a worker. */
export function makeBoard(desks: Desks, shown: BoardSignals): SharedBoard {
  const board = new SharedBoard({
    shown,
    outbox: new IdbOutbox(LOG_NAME),
    session: () => desks.own.notebook.peek().settledId(),
    hire: () =>
      new Worker(new URL("../../board/board-worker.ts", import.meta.url), { type: "module" }),
  });
  desks.own.store.subscribe(() => board.look());
  addEventListener("online", () => board.hurry());
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") void board.goOn();
  });
  return board;
}

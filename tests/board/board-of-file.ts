import { afterAll, beforeAll } from "vitest";
import { LocalBoard } from "./local-board.ts";

/** A board that a file's tests share: opened before the first of them, closed after the last. */
export function boardOfFile(): Pick<LocalBoard, "board" | "invite"> {
  let opened: LocalBoard | undefined;
  const local = () => {
    if (!opened) throw new Error("The board is there within tests only.");
    return opened;
  };
  beforeAll(async () => {
    opened = await LocalBoard.open();
  });
  afterAll(() => opened?.close());
  return {
    get board() {
      return local().board;
    },
    invite: (...args) => local().invite(...args),
  };
}

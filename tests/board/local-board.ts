/** A board on this machine for the length of a test file, with nothing left of it afterwards. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { OpenBoard } from "../tools/board/open-board.ts";
import { freePort } from "./free-port.ts";

export const MINUTE_MS = 60_000;

const inAnHour = () => Date.now() + 60 * MINUTE_MS;

export class LocalBoard {
  readonly board: OpenBoard;
  readonly #folder: string;

  private constructor(board: OpenBoard, folder: string) {
    this.board = board;
    this.#folder = folder;
  }

  /** @param mostBytes room for messages */
  static async open(name = "osier", mostBytes = 8 * 1024 * 1024): Promise<LocalBoard> {
    const folder = mkdtempSync(join(tmpdir(), "pegscribe-board-"));
    const board = await OpenBoard.open({
      board: name,
      folder,
      storeFolder: join(folder, "store"),
      host: "127.0.0.1",
      port: await freePort(),
      mostBytes,
    });
    return new LocalBoard(board, folder);
  }

  invite(seat: string, until = inAnHour()) {
    return this.board.invite(seat, until);
  }

  async close(): Promise<void> {
    await this.board.stop("SIGKILL");
    rmSync(this.#folder, { recursive: true, force: true });
  }
}

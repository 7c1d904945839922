/** A line between phones and a board's server that breaks off after so many bytes, again and again. */
import { connect, createServer, type Server, type Socket } from "node:net";
import type { Random } from "../simulation/random.ts";
import { freePort } from "./free-port.ts";

/** Enough to say who one is (some 2,000 bytes), and then for a few messages or for many. */
const LEAST_BYTES = 1000;
const MOST_BYTES = 9000;

export class BadLine {
  readonly port: number;
  cuts = 0;
  readonly #server: Server;
  readonly #open = new Set<Socket>();

  private constructor(port: number, to: number, random: Random) {
    this.port = port;
    this.#server = createServer((phone) => this.#pass(phone, connect(to, "127.0.0.1"), random));
  }

  /** @param to the server's port */
  static async open(to: number, random: Random): Promise<BadLine> {
    const line = new BadLine(await freePort(), to, random);
    await new Promise<void>((ready) => line.#server.listen(line.port, "127.0.0.1", ready));
    return line;
  }

  close(): void {
    this.#server.close();
    for (const socket of this.#open) socket.destroy();
  }

  #pass(phone: Socket, board: Socket, random: Random): void {
    let left = random.between(LEAST_BYTES, MOST_BYTES);
    const cut = () => {
      phone.destroy();
      board.destroy();
    };
    const count = (piece: Buffer) => {
      left -= piece.length;
      if (left > 0) return;
      if (!phone.destroyed) this.cuts += 1;
      cut();
    };
    for (const [from, to] of [
      [phone, board],
      [board, phone],
    ] as const) {
      this.#open.add(from);
      from.on("error", cut);
      from.on("close", cut);
      // What broke the line off is lost on the way.
      from.on("data", (piece) => {
        count(piece);
        if (!to.destroyed) to.write(piece);
      });
    }
  }
}

import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { connectTo } from "../../src/board/connection.ts";
import type { Joined } from "../../src/board/membership.ts";
import { Office } from "../../src/board/office.ts";
import { patched } from "../../src/board/picture/teller.ts";
import type { BoardView } from "../../src/board/picture/view.ts";
import { streamOf } from "../../src/board/subjects.ts";
import type { FromBoard } from "../../src/board/talk.ts";
import { MemoryOutbox } from "../../src/log/memory-outbox.ts";
import { CountingSocket } from "../bench/board/counting-socket.ts";
import { streamConfig } from "../tools/board/configuration.ts";
import { allSent } from "./all-sent.ts";
import { LocalBoard } from "./local-board.ts";
import { Phone } from "./phone.ts";

let local: LocalBoard;
let phone: Phone;

beforeAll(async () => {
  local = await LocalBoard.open();
  phone = new Phone();
  phone.open(await phone.join(await local.invite("peg-1")));
});

afterAll(async () => {
  phone?.close();
  await local?.close();
});

/** Each connection's bytes, the last one's last. */
class Looker {
  readonly office: Office;
  readonly sockets: CountingSocket[] = [];
  view: BoardView | undefined;

  constructor(joined: Joined) {
    this.office = new Office({
      ...{ joined, outbox: new MemoryOutbox(new Map()) },
      tell: (news) => this.#hear(news),
      connect: (invitation) => {
        const counting = new CountingSocket();
        this.sockets.push(counting);
        return connectTo(invitation, counting.socket);
      },
    });
  }

  #hear(news: FromBoard): void {
    if (news.is === "opening") this.view = undefined;
    if (news.is === "news") this.view = patched(this.view, news.patch);
  }

  countOf(seat: string): number | undefined {
    return this.view?.rows.find((row) => row.seat === seat)?.count;
  }

  get lastBytes(): number {
    return this.sockets.at(-1)?.bytes ?? Number.NaN;
  }
}

const soon = { timeout: 20_000, interval: 20 };

async function watching(): Promise<Looker> {
  return new Looker({
    invitation: await local.invite("watch-1"),
    ...{ standing: { name: "Bo" }, shares: { notes: false, heard: false } },
    ...{ since: Date.now(), session: "none" },
  });
}

test("who looks again sees all of the board, and only what is new crosses the network", async () => {
  await phone.logFish(400);
  await allSent(phone, soon);
  const looker = await watching();
  looker.office.follow();
  await vi.waitFor(() => expect(looker.countOf("peg-1")).toBe(400), soon);
  const first = looker.lastBytes;
  looker.office.unfollow();
  await phone.logFish(1);
  await allSent(phone, soon);
  expect(looker.countOf("peg-1")).toBe(400);
  looker.office.follow();
  expect(looker.view).toBeUndefined();
  await vi.waitFor(() => expect(looker.countOf("peg-1")).toBe(401), soon);
  expect(looker.lastBytes).toBeLessThan(first / 4);
  looker.office.close();
});

test("of a board that was made anew nothing is shown that was on the one before", async () => {
  const looker = await watching();
  looker.office.follow();
  await vi.waitFor(() => expect(looker.countOf("peg-1")).toBeGreaterThan(0), soon);
  looker.office.unfollow();
  const stream = streamOf("osier");
  await local.board.asKeeper(async (manager) => {
    await manager.streams.delete(stream);
    await manager.streams.add(streamConfig("osier", 8 * 1024 * 1024));
  });
  const other = new Phone();
  other.open(await other.join(await local.invite("peg-2")));
  await other.logFish(3);
  looker.office.follow();
  await vi.waitFor(() => expect(looker.countOf("peg-2")).toBe(3), soon);
  expect(looker.countOf("peg-1")).toBeUndefined();
  other.close();
  looker.office.close();
});

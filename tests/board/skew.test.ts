/** Phones whose clocks are an hour off, on one board. */
import { expect, test, vi } from "vitest";
import { connectTo } from "../../src/board/connection.ts";
import { NatsReader } from "../../src/board/nats-reader.ts";
import { BoardPicture } from "../../src/board/picture/picture.ts";
import { nodeSocket } from "../tools/board/node-socket.ts";
import { LocalBoard } from "./local-board.ts";
import { Phone } from "./phone.ts";

const HOUR_MS = 3_600_000;
const A_MOMENT_MS = 15_000;

test("an hour's difference between phones' clocks puts no fish at another time", async () => {
  const local = await LocalBoard.open();
  const phones = [0, HOUR_MS, -HOUR_MS].map((aheadMs) => new Phone(aheadMs));
  const picture = new BoardPicture();
  const reader = new NatsReader({
    invitation: await local.invite("watch-1"),
    connect: (one) => connectTo(one, nodeSocket),
    onLive: () => {},
    onTrouble: () => {},
  });
  reader.start(picture.receive);
  try {
    const began = Date.now();
    for (const [n, phone] of phones.entries()) {
      phone.open(await phone.join(await local.invite(`peg-${n + 1}`)));
      await phone.logFish(2);
    }
    const rows = () => picture.view(Date.now()).rows;
    await vi.waitFor(() => expect(rows().map(({ count }) => count)).toEqual([2, 2, 2]), 20_000);
    for (const { seat, lastFishAt = 0 } of rows()) {
      const isNow = lastFishAt >= began - A_MOMENT_MS && lastFishAt <= Date.now() + A_MOMENT_MS;
      expect([seat, isNow]).toEqual([seat, true]);
    }
    expect(Math.abs((picture.aheadOf("peg-2") ?? 0) + HOUR_MS)).toBeLessThan(A_MOMENT_MS);
    expect(Math.abs((picture.aheadOf("peg-3") ?? 0) - HOUR_MS)).toBeLessThan(A_MOMENT_MS);
  } finally {
    reader.stop();
    for (const phone of phones) phone.close();
    await local.close();
  }
});

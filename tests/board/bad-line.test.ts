import { expect, test, vi } from "vitest";
import { randomOf } from "../simulation/random.ts";
import { allSent } from "./all-sent.ts";
import { BadLine } from "./bad-line.ts";
import { LocalBoard } from "./local-board.ts";
import { Phone } from "./phone.ts";
import { Watcher } from "./watcher.ts";

const FISH = 400;

test("a line that breaks off in the middle of anything loses nothing and doubles nothing", async () => {
  const local = await LocalBoard.open();
  const line = await BadLine.open(local.board.options.port, randomOf(8));
  const address = `ws://127.0.0.1:${line.port}`;
  const phone = new Phone();
  const [direct, through] = [
    new Watcher(await local.invite("watch-1")),
    new Watcher({ ...(await local.invite("watch-2")), address }),
  ];
  // Whoever waits longer each time would make a long test of it.
  const hurrying = setInterval(() => {
    phone.hurry();
    through.hurry();
  }, 50);
  try {
    phone.open(await phone.join({ ...(await local.invite("peg-1")), address }));
    const ids: string[] = [];
    while (ids.length < FISH) {
      ids.push(...(await phone.logFish(10)));
      await new Promise((done) => setTimeout(done, 40));
    }
    const within = { timeout: 40_000, interval: 50 };
    await allSent(phone, within);
    await vi.waitFor(() => expect(through.ids.length).toBeGreaterThanOrEqual(FISH), within);
    expect([...direct.ids].sort()).toEqual([...ids].sort());
    expect(through.ids).toEqual(direct.ids);
    expect(line.cuts).toBeGreaterThan(10);
    expect(phone.troubles.length).toBeGreaterThan(3);
  } finally {
    clearInterval(hurrying);
    for (const one of [phone, direct, through, line]) one.close();
    await local.close();
  }
});

/** A disk that takes long, or never ends: what was said is kept, told of, and stored once. */
import { expect, test, vi } from "vitest";
import { LONGEST_RETRY_MS } from "../../src/log/keeper.ts";
import { PATIENCE_MS } from "../../src/log/patience.ts";
import { exportLog } from "../../src/log/transfer.ts";
import { stopTime } from "../stopped-time.ts";
import { keeperOver, storedIds } from "./over-store.ts";
import { SlowStore } from "./slow-store.ts";
import { draft } from "./store-contract.ts";

stopTime();

const setUp = () => keeperOver(SlowStore);

test("waits a while, then keeps the entry and says that it is not stored", async () => {
  const { store, keeper } = setUp();
  store.holdUp();
  const appending = keeper.append([draft()]);
  await vi.advanceTimersByTimeAsync(PATIENCE_MS - 1);
  expect(keeper.keeping.unsaved).toEqual([]);
  await vi.advanceTimersByTimeAsync(1);
  const kept = await appending;
  expect(kept.isStored).toBe(false);
  expect(keeper.keeping.unsaved).toEqual(kept.events);
  expect(keeper.keeping.trouble?.reason).toBe("slow");
  keeper.close();
});

test("lets nobody wait again while the disk has not done what it was asked before", async () => {
  const { store, keeper } = setUp();
  store.holdUp();
  const first = keeper.append([draft()]);
  await vi.advanceTimersByTimeAsync(PATIENCE_MS);
  await first;
  const kept = await keeper.append([draft()]);
  expect(kept.isStored).toBe(false);
  expect(store.asked).toBe(1);
  keeper.close();
});

test("stores everything once, in order, as soon as the disk is back", async () => {
  const { store, keeper } = setUp();
  const before = await keeper.append([draft()]);
  store.holdUp();
  const late = keeper.append([draft(), draft()]);
  await vi.advanceTimersByTimeAsync(PATIENCE_MS);
  const all = [before, await late, await keeper.append([draft()])].flatMap(({ events }) => events);
  await vi.advanceTimersByTimeAsync(3 * LONGEST_RETRY_MS);
  expect(keeper.keeping.unsaved).toHaveLength(3);
  store.letGo();
  await vi.advanceTimersByTimeAsync(0);
  expect(keeper.keeping).toEqual({ unsaved: [] });
  expect(await storedIds(store)).toEqual(all.map(({ id }) => id));
  const after = await keeper.append([draft()]);
  expect(after.isStored).toBe(true);
});

test("a request that the disk has forgotten holds nothing up, however much is said", async () => {
  const { store, keeper } = setUp();
  store.holdUp();
  const first = keeper.append([draft()]);
  await vi.advanceTimersByTimeAsync(PATIENCE_MS);
  await first;
  for (let n = 0; n < 6; n += 1) await keeper.append([draft()]);
  store.forget();
  for (let n = 0; n < 4; n += 1) {
    await keeper.append([draft()]);
    await vi.advanceTimersByTimeAsync(LONGEST_RETRY_MS / 3);
  }
  expect(keeper.keeping).toEqual({ unsaved: [] });
  expect((await keeper.append([draft()])).isStored).toBe(true);
  expect(await storedIds(store)).toHaveLength(12);
});

test("what is read late takes nothing away that is only in memory", async () => {
  const { store, keeper } = setUp();
  let read = () => {};
  const reading = keeper.read(() => new Promise<void>((done) => (read = done)));
  store.holdUp();
  const appending = keeper.append([draft()]);
  await vi.advanceTimersByTimeAsync(PATIENCE_MS);
  await reading;
  const { events } = await appending;
  read();
  await vi.advanceTimersByTimeAsync(0);
  expect(keeper.keeping.unsaved).toEqual(events);
  expect(keeper.keeping.trouble?.reason).toBe("slow");
  keeper.close();
});

test("says that what is stored takes long to read, and takes it back once it is read", async () => {
  const { store, keeper } = setUp();
  store.holdUp();
  const reading = keeper.read(() => store.session("s"));
  await vi.advanceTimersByTimeAsync(PATIENCE_MS);
  await reading;
  expect(keeper.keeping.trouble?.reason).toBe("slow");
  store.letGo();
  await vi.advanceTimersByTimeAsync(0);
  expect(keeper.keeping).toEqual({ unsaved: [] });
});

test("reads again what took long and then could not be read", async () => {
  const { keeper } = setUp();
  let fail = (_: Error) => {};
  const reading = vi
    .fn<() => Promise<void>>()
    .mockReturnValueOnce(new Promise((_, reject) => (fail = reject)))
    .mockResolvedValueOnce();
  const read = keeper.read(reading);
  await vi.advanceTimersByTimeAsync(PATIENCE_MS);
  await read;
  await vi.advanceTimersByTimeAsync(LONGEST_RETRY_MS);
  expect(reading).toHaveBeenCalledTimes(1);
  fail(new Error("gone"));
  await vi.advanceTimersByTimeAsync(LONGEST_RETRY_MS);
  expect(reading).toHaveBeenCalledTimes(2);
  expect(keeper.keeping).toEqual({ unsaved: [] });
});

test("lets what is unsaved out though the rest cannot be read in time", async () => {
  const { store, keeper } = setUp();
  store.holdUp();
  const appending = keeper.append([draft()]);
  await vi.advanceTimersByTimeAsync(PATIENCE_MS);
  const { events } = await appending;
  const exporting = exportLog({ store, unsaved: keeper.keeping.unsaved, now: 0 });
  await vi.advanceTimersByTimeAsync(60_000);
  const log = await exporting;
  expect(log.events).toEqual(events);
  expect(log.incomplete).toMatch(/takes long/);
  keeper.close();
});

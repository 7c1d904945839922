import { expect, test, vi } from "vitest";
import { FIRST_RETRY_MS, LONGEST_RETRY_MS } from "../../src/log/keeper.ts";
import { comparePlaces } from "../../src/log/order.ts";
import { StoreTrouble } from "../../src/log/trouble.ts";
import { stopTime } from "../stopped-time.ts";
import { FailingStore } from "./failing-store.ts";
import { keeperOver, storedIds } from "./over-store.ts";
import { draft } from "./store-contract.ts";

stopTime();

const setUp = () => keeperOver(FailingStore);

test("says that an entry is stored once it is", async () => {
  const { store, keeper } = setUp();
  const said = draft();
  const { events, isStored } = await keeper.append([said]);
  expect(isStored).toBe(true);
  expect(await store.everything()).toEqual(events);
  expect(keeper.keeping).toEqual({ unsaved: [] });
});

test("keeps what was not stored, says so and why", async () => {
  const { store, keeper } = setUp();
  const told = vi.fn();
  keeper.subscribe(told);
  store.failing = "quota";
  const kept = await keeper.append([draft(), draft()]);
  expect(kept.isStored).toBe(false);
  expect(keeper.keeping.unsaved).toEqual(kept.events);
  expect(keeper.keeping.trouble?.message).toContain("no room");
  expect(told).toHaveBeenLastCalledWith(keeper.keeping);
  keeper.close();
});

test("stores it later exactly as it was given out, in order, and says so", async () => {
  const { store, keeper } = setUp();
  const told = vi.fn();
  const before = await keeper.append([draft()]);
  store.failing = "aborted";
  const held = [await keeper.append([draft(), draft()]), await keeper.append([draft()])];
  keeper.subscribe(told);
  store.failing = undefined;
  const after = await keeper.append([draft()]);

  const all = [before, ...held, after].flatMap((kept) => kept.events);
  expect(after.isStored).toBe(true);
  expect((await store.everything()).sort(comparePlaces)).toEqual(all);
  expect(told).toHaveBeenLastCalledWith({ unsaved: [] });
});

test("keeps the order of entries said while an earlier one is still being stored", async () => {
  const { store, keeper } = setUp();
  const drafts = Array.from({ length: 6 }, () => draft());
  const kept = await Promise.all(
    drafts.map((one, n) => {
      if (n === 0) store.failing = "aborted";
      return keeper.append([one]).finally(() => {
        store.failing = n % 2 === 0 ? undefined : "aborted";
      });
    }),
  );
  store.failing = undefined;
  expect(await keeper.retry()).toBe(true);
  expect(kept.map((one) => one.isStored)).toContain(true);
  expect(kept.map((one) => one.isStored)).toContain(false);
  expect(await storedIds(store)).toEqual(drafts.map((one) => one.id));
});

test("tries again by itself, each time after twice the wait, up to the longest", async () => {
  const { store, keeper } = setUp();
  store.failing = "quota";
  await keeper.append([draft()]);
  let waited = 0;
  for (let wait = FIRST_RETRY_MS; wait < LONGEST_RETRY_MS; wait *= 2) {
    const { tries } = store;
    await vi.advanceTimersByTimeAsync(wait - 1);
    expect(store.tries).toBe(tries);
    await vi.advanceTimersByTimeAsync(1);
    expect(store.tries).toBe(tries + 1);
    waited += wait;
  }
  expect(waited).toBeGreaterThan(LONGEST_RETRY_MS / 2);
  const { tries } = store;
  await vi.advanceTimersByTimeAsync(3 * LONGEST_RETRY_MS);
  expect(store.tries).toBe(tries + 3);

  store.failing = undefined;
  await vi.advanceTimersByTimeAsync(LONGEST_RETRY_MS);
  expect(keeper.keeping).toEqual({ unsaved: [] });
  expect(vi.getTimerCount()).toBe(0);
});

test("begins again with the first wait after all was stored", async () => {
  const { store, keeper } = setUp();
  store.failing = "quota";
  await keeper.append([draft()]);
  await vi.advanceTimersByTimeAsync(7 * FIRST_RETRY_MS);
  store.failing = undefined;
  await keeper.retry();
  store.failing = "quota";
  await keeper.append([draft()]);
  const { tries } = store;
  await vi.advanceTimersByTimeAsync(FIRST_RETRY_MS);
  expect(store.tries).toBe(tries + 1);
  keeper.close();
});

test("reads what could not be read once it can be, by itself, and then nothing is wrong", async () => {
  const { store, keeper } = setUp();
  const reading = vi.fn(() => store.everything());
  store.failing = "blocked";
  await keeper.read(reading);
  expect(keeper.keeping.trouble?.reason).toBe("blocked");
  await vi.advanceTimersByTimeAsync(3 * FIRST_RETRY_MS);
  expect(reading).toHaveBeenCalledTimes(3);
  expect(keeper.keeping.trouble?.reason).toBe("blocked");
  store.failing = undefined;
  await vi.advanceTimersByTimeAsync(4 * FIRST_RETRY_MS);
  expect(reading).toHaveBeenCalledTimes(4);
  expect(keeper.keeping).toEqual({ unsaved: [] });
  expect(vi.getTimerCount()).toBe(0);
  store.failing = "blocked";
  await keeper.read(reading);
  await vi.advanceTimersByTimeAsync(FIRST_RETRY_MS);
  expect(reading).toHaveBeenCalledTimes(6);
  keeper.close();
});

test("reads it before the next entry is confirmed, and warns on while it cannot", async () => {
  const { store, keeper } = setUp();
  let isReadable = false;
  const reading = vi.fn(async () => {
    if (!isReadable) throw new StoreTrouble("aborted");
  });
  await keeper.read(reading);
  const kept = await keeper.append([draft()]);
  expect(kept.isStored).toBe(true);
  expect(keeper.keeping.trouble?.reason).toBe("aborted");
  isReadable = true;
  const reads = reading.mock.calls.length;
  await keeper.append([draft()]);
  expect(reading).toHaveBeenCalledTimes(reads + 1);
  expect(keeper.keeping).toEqual({ unsaved: [] });
  await keeper.append([draft()]);
  expect(reading).toHaveBeenCalledTimes(reads + 1);
  expect(await store.everything()).toHaveLength(3);
  keeper.close();
});

test("closed, it tries no more and still has what is unsaved", async () => {
  const { store, keeper } = setUp();
  store.failing = "quota";
  await keeper.append([draft()]);
  keeper.close();
  expect(vi.getTimerCount()).toBe(0);
  expect(keeper.keeping.unsaved).toHaveLength(1);
});

import { signal } from "@preact/signals";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { goingOver } from "../../src/scribe/going-over.ts";

const reload = vi.fn();
beforeEach(() => vi.stubGlobal("location", { reload }));
afterEach(() => {
  vi.unstubAllGlobals();
  reload.mockClear();
});

const isTaken = signal(true);

test("what is just being stored is waited for", async () => {
  let isDone = (_: boolean) => {};
  const stored = () => new Promise<boolean>((done) => (isDone = done));
  const going = goingOver({ isTaken, isBusy: () => false, stored })();
  expect(reload).not.toHaveBeenCalled();
  isDone(true);
  await going;
  expect(reload).toHaveBeenCalledOnce();
});

test("a page whose last entry is only in memory stays", async () => {
  await goingOver({ isTaken, isBusy: () => false, stored: async () => false })();
  expect(reload).not.toHaveBeenCalled();
});

test("a session that begins while that is waited for stays", async () => {
  let isBusy = false;
  const stored = async () => {
    isBusy = true;
    return true;
  };
  await goingOver({ isTaken, isBusy: () => isBusy, stored })();
  expect(reload).not.toHaveBeenCalled();
});

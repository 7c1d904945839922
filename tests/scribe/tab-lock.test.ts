import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { TabLock } from "../../src/scribe/tab-lock.ts";

/** The locks of one browser, after the W3C's Web Locks, as far as they are used. */
class FakeLocks {
  readonly held = new Set<string>();

  async request(
    name: string,
    _options: object,
    callback: (lock: object | null) => Promise<void> | undefined,
  ) {
    if (this.held.has(name)) return callback(null);
    this.held.add(name);
    await callback({ name });
    this.held.delete(name);
  }

  async query() {
    return { held: [...this.held].map((name) => ({ name })) };
  }
}

let document: { hidden: boolean };

beforeEach(() => {
  document = { hidden: false };
  vi.stubGlobal("navigator", { locks: new FakeLocks() });
  vi.stubGlobal("document", document);
});

afterEach(() => vi.unstubAllGlobals());

const ours = async (...tabs: TabLock[]) => Promise.all(tabs.map((tab) => tab.isOurs()));
const tab = () => new TabLock("ears");

test("of two tabs the one that listens speaks up, in sight or not", async () => {
  const [one, two] = [tab(), tab()];
  expect([await one.take(), await two.take()]).toEqual([true, false]);
  expect(await ours(one, two)).toEqual([true, false]);
  document.hidden = true;
  expect(await ours(one, two)).toEqual([true, false]);
});

test("a tab is not taken for another one, asking twice or just after it gave the lock back", async () => {
  const one = tab();
  expect(await Promise.all([one.take(), one.take()])).toEqual([true, true]);
  expect(await one.take()).toBe(true);
  one.release();
  expect(await one.take()).toBe(true);
  expect(await tab().take()).toBe(false);
});

test("while no tab listens, the one in sight speaks up", async () => {
  const one = tab();
  await one.take();
  one.release();
  await Promise.resolve();
  expect(await ours(one)).toEqual([true]);
  document.hidden = true;
  expect(await ours(one)).toEqual([false]);
});

test("where a browser refuses its locks, as with storage blocked, each tab takes itself for the one", async () => {
  const refuse = () => Promise.reject(new DOMException("denied", "SecurityError"));
  vi.stubGlobal("navigator", { locks: { request: refuse, query: refuse } });
  const one = tab();
  expect([await one.take(), await one.isOurs()]).toEqual([true, true]);
});

test("where a browser has no locks, each tab takes itself for the one", async () => {
  vi.stubGlobal("navigator", {});
  const [one, two] = [tab(), tab()];
  expect([await one.take(), await two.take()]).toEqual([true, true]);
  expect(await ours(one, two)).toEqual([true, true]);
});

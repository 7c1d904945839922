import { signal } from "@preact/signals";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { AtStake } from "../../src/scribe/at-stake.ts";

/** The locks of one browser, after the W3C's Web Locks, as far as they are used. */
class FakeLocks {
  #held: string | undefined;
  #queue: Promise<void> = Promise.resolve();

  request(name: string, callback: () => Promise<void>): Promise<void> {
    this.#queue = this.#queue.then(async () => {
      this.#held = name;
      await callback();
      this.#held = undefined;
    });
    return this.#queue;
  }

  async query() {
    return { held: this.#held === undefined ? [] : [{ name: this.#held }] };
  }
}

beforeEach(() => vi.stubGlobal("navigator", { locks: new FakeLocks() }));
afterEach(() => vi.unstubAllGlobals());

function tab() {
  const here = signal(false);
  return { here, atStake: new AtStake(here) };
}

async function seen({ atStake }: ReturnType<typeof tab>): Promise<boolean> {
  // Locks are given and taken a moment later.
  await new Promise((done) => setTimeout(done));
  await atStake.look();
  return atStake.anywhere.value;
}

test("what is at stake in one tab is known in all, until it no longer is in any", async () => {
  const [one, two, other] = [tab(), tab(), tab()];
  expect(await seen(other)).toBe(false);
  one.here.value = true;
  two.here.value = true;
  expect(await seen(other)).toBe(true);
  one.here.value = false;
  expect(await seen(other)).toBe(true);
  two.here.value = false;
  expect(await seen(other)).toBe(false);
});

test("nothing is taken for safe before it was looked at", () => {
  expect(tab().atStake.anywhere.value).toBe(true);
});

test.each([
  ["has no locks", {}],
  [
    "refuses them",
    {
      locks: {
        request: () => Promise.reject(new DOMException("no", "SecurityError")),
        query: () => Promise.reject(new DOMException("no", "SecurityError")),
      },
    },
  ],
])("where a browser %s, a tab knows of itself alone", async (_, browser) => {
  vi.stubGlobal("navigator", browser);
  const [one, other] = [tab(), tab()];
  one.here.value = true;
  expect([await seen(one), await seen(other)]).toEqual([true, false]);
});

import { expect, test } from "vitest";
import { SteadyClock } from "../../src/log/clock.ts";
import type { EventDraft } from "../../src/log/event.ts";
import { newId } from "../../src/log/identity.ts";
import { MemoryStore } from "../../src/log/memory-store.ts";
import { Desk } from "../../src/scribe/desk.ts";

/** Counts how often it is asked for all sessions, and refuses while told to. */
class CountedStore extends MemoryStore {
  asked = 0;
  refuses = false;

  override sessions() {
    this.asked += 1;
    return this.refuses ? Promise.reject(new Error("no")) : super.sessions();
  }
}

const drop = (session: string, at: number): EventDraft => ({
  ...{ id: newId(), session, verdict: "log", at },
  body: { kind: "entry", statement: { kind: "drop" } },
});

async function deskOver(...sessions: string[]) {
  const clock = new SteadyClock(
    () => 100_000,
    () => 0,
  );
  const store = new CountedStore(clock);
  for (const [n, id] of sessions.entries()) await store.append([drop(id, 1000 * (n + 1))]);
  const desk = new Desk({ store, clock, now: () => 0, id: "open" });
  await desk.refresh();
  return { store, desk };
}

test("what is written is told from itself, and the store is not asked for its sessions again", async () => {
  const { store, desk } = await deskOver("june", "july");
  expect(desk.sessions.value.map(({ id }) => id)).toEqual(["july", "june"]);
  await store.append([drop("open", 50_000), drop("july", 60_000)]);
  await desk.refresh();
  await desk.refresh();
  expect(store.asked).toBe(1);
  expect(desk.sessions.value).toEqual(await store.sessions());
  expect(desk.sessions.value[1]).toMatchObject({ id: "july", lastAt: 60_000 });
  // From another phone, of before.
  const earlier = { ...drop("july", 500), v: 1 as const, device: "other", seq: 1, at: 500 };
  await store.put([earlier]);
  await desk.refresh();
  expect(desk.sessions.value).toEqual(await store.sessions());
});

test("a season taken in at once is told like anything else", async () => {
  const { store, desk } = await deskOver("june");
  const season = Array.from({ length: 150_000 }, (_, n) => ({
    ...drop(`day ${n % 300}`, 1000 * n + 1000),
    ...{ v: 1 as const, id: `e${n}`, device: "d", seq: n + 1, at: 1000 * n + 1000 },
  }));
  expect(await store.put(season)).toHaveLength(150_000);
  await desk.refresh();
  expect(desk.sessions.value).toHaveLength(301);
});

test("a list that nothing was written to stays the same", async () => {
  const { desk } = await deskOver("june");
  const before = desk.sessions.value;
  await desk.refresh();
  expect(desk.sessions.value).toBe(before);
});

test("a session that is taken out does not come back with what was written into it before", async () => {
  const { store, desk } = await deskOver("june", "july");
  await store.append([drop("july", 60_000)]);
  const removed = await store.remove("july");
  await desk.refresh();
  expect(desk.sessions.value.map(({ id }) => id)).toEqual(["june"]);
  await store.bringBack(removed);
  await desk.refresh();
  expect(desk.sessions.value).toEqual(await store.sessions());
});

test("a list that could not be read is read once it can be", async () => {
  const { store, desk } = await deskOver("june");
  store.refuses = true;
  await store.remove("june");
  await desk.refresh();
  expect(desk.sessions.value.map(({ id }) => id)).toEqual(["june"]);
  store.refuses = false;
  await store.append([drop("july", 60_000)]);
  await desk.refresh();
  expect(desk.sessions.value.map(({ id }) => id)).toEqual(["july"]);
});

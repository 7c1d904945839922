import { expect, test } from "vitest";
import { SteadyClock } from "../../src/log/clock.ts";
import type { EventBody } from "../../src/log/event.ts";
import { newId } from "../../src/log/identity.ts";
import { MemoryStore } from "../../src/log/memory-store.ts";
import { PastShelf } from "../../src/scribe/past-shelf.ts";

const POUND_G = 453.59237;

/** A store with some sessions of one weighed net each, which counts what is read. */
async function stored(...sessions: string[]) {
  const store = new MemoryStore(new SteadyClock());
  const write = (session: string, body: EventBody) =>
    store.append([{ id: newId(), session, verdict: "log", body }]);
  for (const session of sessions) {
    await write(session, { kind: "entry", statement: { kind: "fish", weightG: 20 * POUND_G } });
    await write(session, { kind: "weigh", net: 1, weightG: 24 * POUND_G });
  }
  const read: string[] = [];
  const reader = {
    session: (id: string) => {
      read.push(id);
      return store.session(id);
    },
    digests: () => store.digests(),
    keepDigest: (...kept: Parameters<typeof store.keepDigest>) => store.keepDigest(...kept),
  };
  return { store, write, read, shelf: new PastShelf(reader) };
}

test("every session but the open one is read once, and leaves its weighed nets", async () => {
  const { store, read, shelf } = await stored("a", "b", "open");
  await shelf.refresh(await store.sessions(), "open");
  await shelf.refresh(await store.sessions(), "open");
  expect(read.toSorted()).toEqual(["a", "b"]);
  expect(shelf.past.value.map(({ id }) => id).toSorted()).toEqual(["a", "b"]);
  const [net] = shelf.past.value.flatMap(({ nets }) => nets);
  expect(net).toMatchObject({ spokenG: 20 * POUND_G, weighedG: 24 * POUND_G });
});

test("one that was written into since is read again, one that is gone is dropped", async () => {
  const { store, write, read, shelf } = await stored("a", "b");
  await shelf.refresh(await store.sessions(), "open");
  await write("a", { kind: "entry", statement: { kind: "net" } });
  const spans = (await store.sessions()).map((span) =>
    span.id === "a" ? { ...span, lastAt: span.lastAt + 1 } : span,
  );
  await shelf.refresh(
    spans.filter(({ id }) => id === "a"),
    "open",
  );
  expect(read.filter((id) => id === "a")).toHaveLength(2);
  expect(shelf.past.value.map(({ id }) => id)).toEqual(["a"]);
});

test("the session that was open is a past once another one is", async () => {
  const { store, shelf } = await stored("a", "b");
  await shelf.refresh(await store.sessions(), "b");
  expect(shelf.past.value).toHaveLength(1);
  const before = shelf.past.value;
  await shelf.refresh(await store.sessions(), "b");
  expect(shelf.past.value).toBe(before);
  await shelf.refresh(await store.sessions(), "c");
  expect(shelf.past.value).toHaveLength(2);
});

test("a session that cannot be read is left out and tried again", async () => {
  const { store } = await stored("a");
  let fails = true;
  const shelf = new PastShelf({
    session: (id) => (fails ? Promise.reject(new Error("No disk.")) : store.session(id)),
    digests: () => (fails ? Promise.reject(new Error("No disk.")) : store.digests()),
    keepDigest: (...kept) => store.keepDigest(...kept),
  });
  await shelf.refresh(await store.sessions(), "open");
  expect(shelf.past.value).toEqual([]);
  fails = false;
  await shelf.refresh(await store.sessions(), "open");
  expect(shelf.past.value).toHaveLength(1);
});

test("what a digest is kept of is not read again by the next page", async () => {
  const { store, read, shelf } = await stored("a", "b");
  await shelf.refresh(await store.sessions(), "open");
  const next = new PastShelf({
    session: (id) => {
      read.push(`again ${id}`);
      return store.session(id);
    },
    digests: () => store.digests(),
    keepDigest: (...kept) => store.keepDigest(...kept),
  });
  await next.refresh(await store.sessions(), "open");
  expect(read.toSorted()).toEqual(["a", "b"]);
  expect(next.past.value).toEqual(shelf.past.value);
});

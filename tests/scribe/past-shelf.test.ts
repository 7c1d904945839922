import { expect, test } from "vitest";
import { SteadyClock } from "../../src/log/clock.ts";
import type { EventBody } from "../../src/log/event.ts";
import { newId } from "../../src/log/identity.ts";
import { MemoryStore } from "../../src/log/memory-store.ts";
import { PastShelf } from "../../src/scribe/past-shelf.ts";
import { clerkOf } from "../../src/scribe/season/clerk.ts";
import { allDigests } from "../../src/scribe/season/digest-keeper.ts";
import { Season } from "../../src/scribe/season/season.ts";

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
  const complete = () => allDigests(reader);
  return { store, write, read, reader, complete, shelf: new PastShelf(reader, complete) };
}

test("every session is read once, and each but the open one leaves its weighed nets", async () => {
  const { store, read, shelf } = await stored("a", "b", "open");
  await shelf.refresh(await store.sessions(), "open");
  await shelf.refresh(await store.sessions(), "open");
  expect(read.toSorted()).toEqual(["a", "b", "open"]);
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
  expect(read.toSorted()).toEqual(["a", "a", "b"]);
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

test("what the open session is written into is not looked at", async () => {
  const { store, write, read, shelf } = await stored("a", "open");
  await shelf.refresh(await store.sessions(), "open");
  await write("open", { kind: "entry", statement: { kind: "fish" } });
  await shelf.refresh(await store.sessions(), "open");
  expect(read.toSorted()).toEqual(["a", "open"]);
});

test("what cannot be read is left out and tried again", async () => {
  const { store, complete } = await stored("a");
  let fails = true;
  const orTrouble = <T>(read: () => Promise<T>) =>
    fails ? Promise.reject(new Error("No disk.")) : read();
  for (const shelf of [
    new PastShelf({ digests: () => orTrouble(() => store.digests()) }, complete),
    new PastShelf(store, () => orTrouble(complete)),
  ]) {
    fails = true;
    await shelf.refresh(await store.sessions(), "open");
    expect(shelf.past.value).toEqual([]);
    fails = false;
    await shelf.refresh(await store.sessions(), "open");
    expect(shelf.past.value).toHaveLength(1);
    await store.keepDigest("a", 2, undefined);
  }
});

test("what a digest is kept of is not made again by the next page", async () => {
  const { store, read, shelf, reader } = await stored("a", "b");
  await shelf.refresh(await store.sessions(), "open");
  const next = new PastShelf(reader, () => Promise.reject(new Error("Nothing is missing.")));
  await next.refresh(await store.sessions(), "open");
  expect(read.toSorted()).toEqual(["a", "b"]);
  expect(next.past.value).toEqual(shelf.past.value);
});

test("the past and the list of sessions, asked for at once, have each digest made once", async () => {
  const { store, read, reader } = await stored("a", "b", "c");
  const season = new Season({ store, clerk: clerkOf(reader), begin: async () => {} });
  const shelf = new PastShelf(store, () => season.complete());
  const told: unknown[] = [];
  const stop = season.progress.subscribe((progress) => void told.push(progress?.of));
  await Promise.all([shelf.refresh(await store.sessions(), "open"), season.look()]);
  stop();
  expect(read.toSorted()).toEqual(["a", "b", "c"]);
  expect(shelf.past.value).toHaveLength(3);
  expect(season.digests.value).toHaveLength(3);
  expect(told).toEqual([undefined, 3, 3, 3, 3, undefined]);
});

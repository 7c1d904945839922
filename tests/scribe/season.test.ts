import { expect, test } from "vitest";
import { SteadyClock } from "../../src/log/clock.ts";
import type { EntryStatement, EventBody, LogEvent } from "../../src/log/event.ts";
import { newId } from "../../src/log/identity.ts";
import { MemoryStore } from "../../src/log/memory-store.ts";
import { Desks } from "../../src/scribe/desks.ts";
import type { Note } from "../../src/scribe/notebook.ts";
import { type Clerk, clerkOf } from "../../src/scribe/season/clerk.ts";
import { type Digest, digestOf } from "../../src/scribe/season/digest.ts";
import { allDigests, readDigests } from "../../src/scribe/season/digest-keeper.ts";
import { distantClerk } from "../../src/scribe/season/distant-clerk.ts";
import { fits, sumsOver } from "../../src/scribe/season/query.ts";
import { Season } from "../../src/scribe/season/season.ts";
import { notesLike } from "../../src/scribe/season/start-like.ts";
import { event } from "../log/session-script.ts";

const HOUR_MS = 3_600_000;
/** Noon, where the test runs, on the sixth day of a month of 2026 (0 for January). */
const noon = (month: number) => new Date(2026, month, 6, 12).getTime();

const entry = (statement: EntryStatement): EventBody => ({ kind: "entry", statement });

/** An hour at half a metre and one at a metre, with so many fish in each. */
function day(session: string, from: number, water: string, shallow: number, deep: number) {
  const fish = (count: number): EventBody[] =>
    count > 0 ? [entry({ kind: "fish", weightG: 500, count })] : [];
  const bodies: [hours: number, ...EventBody[]][] = [
    [
      0,
      { kind: "plan", plan: { water, method: "match", peg: "17", endsAt: from + 9, notes: "n" } },
    ],
    [
      0,
      entry({ kind: "session", act: "start" }),
      entry({ kind: "change", depthMm: 500, rig: "2" }),
    ],
    [0.5, ...fish(shallow)],
    [1, entry({ kind: "change", depthMm: 1000 })],
    [1.5, ...fish(deep)],
    [2, entry({ kind: "session", act: "stop" })],
  ];
  return bodies.flatMap(([hours, ...all], place) =>
    all.map((body, n) =>
      event(10 * place + n + 1, body, {
        id: `${session}-${place}-${n}`,
        session,
        at: from + hours * HOUR_MS,
      }),
    ),
  );
}

async function storeWith(...days: ReturnType<typeof day>[]): Promise<MemoryStore> {
  const store = new MemoryStore(new SteadyClock());
  await store.put(days.flat());
  return store;
}

const JUNE = day("june", noon(5), "Osier Lake", 2, 12);
const JULY = day("july", noon(6), "Marram Water", 9, 1);

function seasonOf(store: MemoryStore, clerk: Clerk = clerkOf(store)) {
  const begun: Note[][] = [];
  const begin = async (notes: readonly Note[]) => void begun.push([...notes]);
  return { season: new Season({ store, clerk, begin }), begun };
}

const idsIn = (season: Season) => season.digests.value?.map(({ id }) => id);

test("a digest is what its events come to", () => {
  const digest = digestOf("june", JUNE);
  expect(digest).toMatchObject({
    id: "june",
    firstAt: noon(5),
    lastAt: noon(5) + 2 * HOUR_MS,
    state: "ended",
    plan: { water: "Osier Lake", method: "match" },
    setUp: { rig: "2" },
    fishedMs: 2 * HOUR_MS,
    count: 14,
    spokenG: 7000,
    past: { startedAt: noon(5), water: "Osier Lake" },
  });
  expect(digestOf("june", [...JUNE].reverse())).toEqual(digest);
});

test("one that was never ended lasts until its last event, one that never began has no past", () => {
  expect(digestOf("june", JUNE.slice(0, -1)).fishedMs).toBe(1.5 * HOUR_MS);
  const planned = digestOf("june", JUNE.slice(0, 1));
  expect(planned).toMatchObject({ state: "ready", count: 0, fishedMs: 0 });
  expect(planned.past).toBeUndefined();
});

test("digests are made once, told of as they are made, and made again where something was written", async () => {
  const store = await storeWith(JUNE, JULY);
  const told: string[] = [];
  const tell = ({ done, of }: { done: number; of: number }) => void told.push(`${done} of ${of}`);
  expect((await allDigests(store, tell)).map(({ id }) => id).sort()).toEqual(["july", "june"]);
  expect(told).toEqual(["0 of 2", "1 of 2", "2 of 2"]);
  await allDigests(store, tell);
  expect(told).toHaveLength(3);

  await store.append([
    { id: newId(), session: "june", verdict: "log", body: entry({ kind: "fish", count: 5 }) },
  ]);
  expect((await readDigests(store)).missing).toEqual(["june"]);
  const again = await allDigests(store, tell);
  expect(again.find(({ id }) => id === "june")?.count).toBe(19);
  expect(told.slice(3)).toEqual(["0 of 1", "1 of 1"]);
});

test("digests of another version, or that make no sense, are made anew", async () => {
  const store = await storeWith(JUNE);
  for (const odd of [{ v: 0, id: "june", count: 99 }, "rubbish", null]) {
    await store.keepDigest("june", JUNE.length, odd);
    expect((await readDigests(store)).missing).toEqual(["june"]);
    expect((await allDigests(store))[0]?.count).toBe(14);
  }
});

test("sessions are found by water, month and method", () => {
  const june = digestOf("june", JUNE);
  expect(fits(june, {})).toBe(true);
  expect(fits(june, { water: "Osier Lake", month: 5, method: "match" })).toBe(true);
  expect(fits(june, { water: "Marram Water" })).toBe(false);
  expect(fits(june, { month: 6 })).toBe(false);
  expect(fits(june, { method: "practice" })).toBe(false);
});

test("sums over sessions follow what is asked for", () => {
  const digests = [digestOf("june", JUNE), digestOf("july", JULY)];
  const all = sumsOver(digests, {}, "depth");
  expect(all).toMatchObject({ sessions: 2, hours: 4 });
  expect(
    all.best.ranked
      .map(({ level, fish, hours, sessions }) => [level, fish, hours, sessions])
      .sort(),
  ).toEqual([
    [1000, 13, 2, 2],
    [500, 11, 2, 2],
  ]);
  const july = sumsOver(digests, { month: 6 }, "depth");
  expect(july).toMatchObject({ sessions: 1, hours: 2 });
  expect(july.best.ranked[0]).toMatchObject({ level: 500, fish: 9 });
  expect(sumsOver(digests, { water: "nowhere" }, "rig").best).toEqual({
    verdict: "too-few",
    ranked: [],
  });
});

test("the list is there at once and whole after what was missing is made", async () => {
  const store = await storeWith(JUNE);
  await allDigests(store);
  await store.put(JULY);
  const seen: (string[] | undefined)[] = [];
  const clerk = clerkOf(store);
  const { season } = seasonOf(store, {
    ask: (asked, onProgress) => {
      seen.push(idsIn(season));
      return clerk.ask(asked, onProgress);
    },
  });
  expect(idsIn(season)).toBeUndefined();
  await season.look();
  expect(seen).toEqual([["june"]]);
  expect(idsIn(season)).toEqual(["july", "june"]);
  expect(season.progress.value).toBeUndefined();
  await season.look();
  expect(seen).toHaveLength(1);
});

test("while many digests are made the list grows, and what is asked meanwhile waits for them", async () => {
  const days = Array.from({ length: 45 }, (_, n) =>
    day(`day ${n}`, noon(0) + n * 24 * HOUR_MS, "Osier Lake", 1, 1),
  );
  const store = await storeWith(...days);
  let read = 0;
  const clerk = clerkOf({
    session: (id) => {
      read += 1;
      return store.session(id);
    },
    digests: () => store.digests(),
    keepDigest: (...kept) => store.keepDigest(...kept),
  });
  const { season } = seasonOf(store, clerk);
  const lengths: number[] = [];
  const stop = season.digests.subscribe((digests) => void lengths.push(digests?.length ?? 0));
  const [sums] = await Promise.all([
    season.sums("depth", {}),
    season.look(),
    season.start("Osier Lake"),
  ]);
  stop();
  expect(sums.sessions).toBe(45);
  expect(read).toBe(45);
  expect(idsIn(season)).toHaveLength(45);
  expect(season.digests.value?.[0]?.id).toBe("day 44");
  await store.append(
    days.map(([first]) => ({
      ...(first as LogEvent),
      id: newId(),
      body: { kind: "heard" } as const,
    })),
  );
  lengths.length = 0;
  const again = season.digests.subscribe((digests) => void lengths.push(digests?.length ?? 0));
  await season.look();
  again();
  expect(lengths.some((length) => length > 0 && length < 45)).toBe(true);
  expect(lengths.at(-1)).toBe(45);
});

test("a session taken out is gone from the store, and comes back whole", async () => {
  const store = await storeWith(JUNE, JULY);
  const { season } = seasonOf(store);
  await season.look();
  await season.takeOut(season.digests.value?.[0] as Digest);
  expect(idsIn(season)).toEqual(["june"]);
  expect((await store.everything()).every(({ session }) => session === "june")).toBe(true);
  expect(await store.put(JULY)).toEqual([]);
  expect((await season.sums("depth", {})).sessions).toBe(1);
  await season.takenOut.value?.bringBack();
  expect(idsIn(season)).toEqual(["july", "june"]);
  expect(season.takenOut.value).toBeUndefined();
  expect(await store.session("july")).toEqual(JULY);
  expect((await season.sums("depth", {})).sessions).toBe(2);
});

test("a session taken out elsewhere leaves the list, and the desk that had it open", async () => {
  const store = await storeWith(JUNE, JULY);
  const { season } = seasonOf(store);
  await season.look();
  const kept = new Map([["session", "june"]]);
  const small = {
    get: (name: string) => kept.get(name),
    set: (name: string, value: string) => void kept.set(name, value),
  };
  const desks = new Desks(store, new SteadyClock(), small);
  await desks.own.notebook.value.ready;
  expect(desks.own.session.value.count).toBe(14);
  await store.remove("june");
  expect(idsIn(season)).toEqual(["july"]);
  expect(desks.own.session.value).toMatchObject({ state: "ready", count: 0, entries: [] });
  expect(kept.get("session")).toBe(desks.own.session.value.id);
  expect(kept.get("session")).not.toBe("june");
  await store.remove("july");
  expect(kept.get("session")).toBe(desks.own.session.value.id);
});

test("a new session starts like another with its plan and set-up, but not its peg, times and notes", async () => {
  const { season, begun } = seasonOf(await storeWith(JUNE));
  await season.look();
  await season.startLike(season.digests.value?.[0] as Digest);
  expect(begun[0]?.map(({ body }) => body)).toEqual([
    { kind: "plan", plan: { water: "Osier Lake", method: "match" } },
    entry({ kind: "change", rig: "2", depthMm: 1000 }),
  ]);
});

test("parts of the set-up may be taken from elsewhere", () => {
  const like = { plan: {}, setUp: { rig: "1", bait: "maggot", baitNote: "red" } };
  const [, same] = notesLike(like, { depthMm: 600, bait: "maggot" });
  expect(same?.body).toEqual(
    entry({ kind: "change", rig: "1", bait: "maggot", baitNote: "red", depthMm: 600 }),
  );
  const [, other] = notesLike(like, { bait: "corn" });
  expect(other?.body).toEqual(entry({ kind: "change", rig: "1", bait: "corn" }));
  expect(notesLike({ plan: {}, setUp: {} })).toHaveLength(1);
});

/** A worker that is only written to, and told what to answer. */
function fakeWorker() {
  const sent: { number: number; asked: unknown }[] = [];
  const worker = {
    postMessage: (message: { number: number; asked: unknown }) => void sent.push(message),
    onmessage: null as ((event: MessageEvent) => void) | null,
    onerror: null as ((event: ErrorEvent) => void) | null,
  };
  return {
    worker: worker as Pick<Worker, "postMessage" | "onmessage" | "onerror">,
    sent,
    tell: (data: unknown) => worker.onmessage?.({ data } as MessageEvent),
    fall: () => worker.onerror?.(new Event("error") as ErrorEvent),
  };
}

const nobody = (): Clerk => {
  throw new Error("Nobody should stand in.");
};

test("a clerk in a worker gives each asker its answer, its progress and its trouble", async () => {
  const { worker, sent, tell } = fakeWorker();
  const clerk = distantClerk(worker, nobody);
  const progress: unknown[] = [];
  const first = clerk.ask({ what: "refresh" }, (one) => progress.push(one));
  const second = clerk.ask({ what: "start" });
  expect(sent.map(({ asked }) => asked)).toEqual([{ what: "refresh" }, { what: "start" }]);
  const [one, two] = sent.map(({ number }) => number);
  tell({ number: two, trouble: "quota" });
  tell({ number: one, progress: { done: 1, of: 2 } });
  tell({ number: one, answer: true });
  await expect(second).rejects.toMatchObject({ name: "StoreTrouble", reason: "quota" });
  expect(await first).toBe(true);
  expect(progress).toEqual([{ done: 1, of: 2 }]);
});

test("where the worker does not arrive, the work is done here: what was asked and what will be", async () => {
  const { worker, sent, fall } = fakeWorker();
  const store = await storeWith(JUNE, JULY);
  let standIns = 0;
  const clerk = distantClerk(worker, () => {
    standIns += 1;
    return clerkOf(store);
  });
  const progress: unknown[] = [];
  const first = clerk.ask({ what: "refresh" }, (one) => progress.push(one));
  fall();
  fall();
  expect(await first).toBe(true);
  expect(progress.at(-1)).toEqual({ done: 2, of: 2 });
  const sums = await clerk.ask({ what: "sums", factor: "depth", query: {} });
  expect(sums.sessions).toBe(2);
  expect(sent).toHaveLength(1);
  expect(standIns).toBe(1);
});

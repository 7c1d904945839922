/**
 * What every store must do, as plain checks that run in Node and in a page alike: each opens stores
 * of its own and throws an error if something is not so.
 */
import type { EventDraft, LogEvent } from "../../src/log/event.ts";
import { newId } from "../../src/log/identity.ts";
import type { LogStore } from "../../src/log/store.ts";

export interface StoreCheck {
  name: string;
  run(store: LogStore): Promise<void>;
}

export function assertEqual(actual: unknown, expected: unknown, what: string): void {
  const [is, ought] = [JSON.stringify(actual), JSON.stringify(expected)];
  if (is !== ought) throw new Error(`${what}: expected ${ought}, got ${is}`);
}

export async function assertTrouble(work: Promise<unknown>, reason: string): Promise<void> {
  const cause: unknown = await work.then(
    () => undefined,
    (cause) => cause,
  );
  const isTrouble = cause instanceof Error && cause.name === "StoreTrouble" && "reason" in cause;
  assertEqual(isTrouble ? cause.reason : String(cause), reason, "trouble");
}

export const draft = (session = "s", more: Partial<EventDraft> = {}): EventDraft => ({
  id: newId(),
  session,
  verdict: "log",
  body: { kind: "entry", statement: { kind: "drop" } },
  ...more,
});

export const event = (id: string, session: string, at: number): LogEvent => ({
  ...draft(session, { id }),
  v: 1,
  device: "elsewhere",
  seq: at,
  at,
});

const ids = (events: readonly { id: string }[]) => events.map((one) => one.id).sort();

export const STORE_CONTRACT: readonly StoreCheck[] = [
  {
    name: "numbers what is appended from 1, on one device, in order",
    async run(store) {
      const first = await store.append([draft(), draft()]);
      const second = await store.append([draft()]);
      const all = [...first, ...second];
      assertEqual(
        all.map((one) => one.seq),
        [1, 2, 3],
        "numbers",
      );
      assertEqual(new Set(all.map((one) => one.device)).size, 1, "devices");
    },
  },
  {
    name: "gives back what was appended, whole",
    async run(store) {
      const said = draft("s", {
        group: "g",
        verdict: "check",
        heard: {
          text: "fish two pounds",
          alternatives: ["fish to pounds"],
          confidence: 0.5,
          by: "web",
        },
        body: {
          kind: "entry",
          statement: { kind: "fish", weightG: 907.18474, unit: { weight: "lb" } },
        },
      });
      const [stored] = await store.append([said]);
      const [found] = await store.session("s");
      const sorted = (one: object | undefined) => Object.entries(one ?? {}).sort();
      assertEqual(sorted(found), sorted(stored), "event");
      assertEqual(sorted({ ...found, ...said }), sorted(found), "what was said");
    },
  },
  {
    name: "numbers appends made at once without a gap or a double",
    async run(store) {
      const appended = await Promise.all(Array.from({ length: 20 }, () => store.append([draft()])));
      const numbers = appended.flat().map((one) => one.seq);
      assertEqual(
        numbers.sort((a, b) => a - b),
        Array.from({ length: 20 }, (_, n) => n + 1),
        "numbers",
      );
    },
  },
  {
    name: "never writes an earlier time after a later one",
    async run(store) {
      const [first] = await store.append([draft("s", { at: Date.now() })]);
      const [second] = await store.append([draft("s", { at: Date.now() - 3_600_000 })]);
      assertEqual((second?.at ?? 0) >= (first?.at ?? 0), true, "order of time");
    },
  },
  {
    name: "writes no earlier time after what was held back either",
    async run(store) {
      const held = event("held", "s", Date.now() + 3_600_000);
      await store.putOwn([held]);
      const [next] = await store.append([draft("s")]);
      assertEqual((next?.at ?? 0) >= held.at, true, "order of time");
    },
  },
  {
    name: "appends a draft once, however often it is tried",
    async run(store) {
      const said = draft();
      const [first] = await store.append([said]);
      const [again, other] = await store.append([said, draft()]);
      assertEqual(again, first, "event");
      assertEqual(other?.seq, 2, "next number");
      assertEqual((await store.session("s")).length, 2, "events");
    },
  },
  {
    name: "merges by id and keeps what it had",
    async run(store) {
      const [a, b, changed] = [event("a", "s", 1), event("b", "s", 2), event("a", "other", 9)];
      assertEqual(ids(await store.put([a, b, a])), ["a", "b"], "new events");
      assertEqual(await store.put([changed, b]), [], "new events the second time");
      assertEqual(ids(await store.session("s")), ["a", "b"], "events");
    },
  },
  {
    name: "keeps sessions apart and lists them by their first event, newest first",
    async run(store) {
      await store.put([event("a", "old", 10), event("b", "new", 30), event("c", "old", 40)]);
      await store.put([event("d", "old\u0000er", 5), event("e", "new", 20)]);
      assertEqual(ids(await store.session("old")), ["a", "c"], "one session");
      assertEqual(await store.session("none"), [], "no session");
      assertEqual(
        await store.sessions(),
        [
          { id: "new", firstAt: 20, lastAt: 30 },
          { id: "old", firstAt: 10, lastAt: 40 },
          { id: "old\u0000er", firstAt: 5, lastAt: 5 },
        ],
        "sessions",
      );
      assertEqual(ids(await store.everything()), ["a", "b", "c", "d", "e"], "everything");
    },
  },
  {
    name: "tells of new events only, until told to stop",
    async run(store) {
      const told: string[][] = [];
      const stop = store.subscribe((events) => told.push(ids(events)));
      const [first] = await store.append([draft()]);
      await store.put([event("a", "s", 1)]);
      await store.put([event("a", "s", 1)]);
      await store.append([]);
      stop();
      await store.append([draft()]);
      assertEqual(told, [[first?.id], ["a"]], "told");
    },
  },
  {
    name: "knows what was last written here, and where",
    async run(store) {
      assertEqual(await store.lastWritten(), undefined, "at first");
      const said = draft("s");
      const [first, second] = [draft("t"), draft("t")];
      await store.append([said]);
      await store.append([first, second]);
      const inT = { event: second.id, session: "t" };
      assertEqual(await store.lastWritten(), inT, "of two that were said together");
      await store.append([said]);
      await store.append([]);
      assertEqual(await store.lastWritten(), inT, "with nothing new appended");
      const [elsewhere, held] = [event("a", "s", 1), event("b", "s", 2)];
      await store.put([elsewhere]);
      assertEqual(await store.lastWritten(), inT, "with something from elsewhere");
      await store.putOwn([event("c", "t", 1), held]);
      const inS = { event: "b", session: "s" };
      assertEqual(await store.lastWritten(), inS, "with what was held back");
      await store.append([draft("t")]);
      await store.putOwn([held]);
      assertEqual((await store.lastWritten())?.session, "t", "with what was stored already");
    },
  },
  {
    name: "has nothing damaged in it at first",
    async run(store) {
      await store.append([draft()]);
      assertEqual(await store.damaged(), [], "damaged");
    },
  },
  {
    name: "keeps a digest until something is written, and none of fewer events than there are",
    async run(store) {
      await store.put([event("a", "s", 1), event("b", "other", 2)]);
      const bySession = async () =>
        (await store.digests()).sort((a, b) => a.session.localeCompare(b.session));
      assertEqual(await bySession(), [{ session: "other" }, { session: "s" }], "at first");
      assertEqual(await store.keepDigest("s", 1, { fish: 3 }), true, "kept");
      assertEqual(
        await bySession(),
        [{ session: "other" }, { session: "s", digest: { fish: 3 } }],
        "one kept",
      );
      await store.append([draft("s")]);
      assertEqual(await bySession(), [{ session: "other" }, { session: "s" }], "after writing");
      assertEqual(await store.keepDigest("s", 1, { fish: 3 }), false, "made from too few");
      assertEqual(await store.keepDigest("gone", 1, {}), false, "of no session");
      assertEqual(await bySession(), [{ session: "other" }, { session: "s" }], "in the end");
    },
  },
  {
    name: "takes a session out for good, tells of it, and can bring it back",
    async run(store) {
      const [a, b, c] = [event("a", "s", 1), event("b", "s", 2), event("c", "other", 3)];
      await store.put([a, b, c]);
      const told: string[] = [];
      const stop = store.subscribeRemovals((session) => told.push(session));
      const removed = await store.remove("s");
      assertEqual(told, ["s"], "told");
      assertEqual(ids(await store.everything()), ["c"], "events");
      assertEqual(await store.digests(), [{ session: "other" }], "digests");
      assertEqual(await store.removals(), ["s"], "removals");
      assertEqual(await store.put([a, b]), [], "merged again");
      const back: string[][] = [];
      store.subscribe((events) => back.push(ids(events)));
      await store.bringBack(removed);
      assertEqual(ids(await store.session("s")), ["a", "b"], "brought back");
      assertEqual(back, [["a", "b"]], "told of what came back");
      const listed = (await store.digests()).map(({ session }) => session).sort();
      assertEqual(listed, ["other", "s"], "digests in the end");
      assertEqual(await store.removals(), [], "removals in the end");
      stop();
      await store.remove("s");
      assertEqual(told, ["s"], "told no more");
    },
  },
  {
    name: "takes a session in again once it is let",
    async run(store) {
      const a = event("a", "s", 1);
      await store.put([a]);
      await store.remove("s");
      await store.readmit(["s", "unknown"]);
      assertEqual(ids(await store.put([a])), ["a"], "events");
    },
  },
  {
    name: "says that it is closed, and tells nobody any more",
    async run(store) {
      store.close();
      await assertTrouble(store.append([draft()]), "closed");
      await assertTrouble(store.put([event("a", "s", 1)]), "closed");
      await assertTrouble(store.lastWritten(), "closed");
      await assertTrouble(store.session("s"), "closed");
      await assertTrouble(store.sessions(), "closed");
      await assertTrouble(store.everything(), "closed");
      await assertTrouble(store.damaged(), "closed");
      await assertTrouble(store.digests(), "closed");
      await assertTrouble(store.keepDigest("s", 0, {}), "closed");
      await assertTrouble(store.remove("s"), "closed");
      await assertTrouble(store.removals(), "closed");
    },
  },
];

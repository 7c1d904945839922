/** What the store in IndexedDB must do with the copy of its log. */
import { SteadyClock } from "../../src/log/clock.ts";
import type { Copied, LogCopy } from "../../src/log/copy.ts";
import type { LogEvent } from "../../src/log/event.ts";
import { IdbStore } from "../../src/log/idb-store.ts";
import { assertEqual, assertTrouble, draft, event } from "../log/store-contract.ts";
import { type IdbCheck, open, withMethod } from "./store-checks.ts";
import { makeV1, V1_DEVICE, V1_EVENTS } from "./store-v1.ts";

/** Sooner than the store gives the copy up. */
const isDoneSoon = (work: Promise<unknown>) =>
  Promise.race([
    work.then(() => true),
    new Promise<boolean>((done) => setTimeout(() => done(false), 1000)),
  ]);

/** A copy in memory, of which reading can be held up. */
class ScriptedCopy implements LogCopy {
  readonly copied: Copied = { events: [] };
  reading: Promise<unknown> = Promise.resolve();
  /** Told of each reading that begins. */
  onRead = () => {};

  async add(events: readonly LogEvent[], device?: string): Promise<void> {
    this.copied.events.push(...events);
    if (device !== undefined) this.copied.device = device;
  }

  /** Never done, as by a worker that is killed. */
  remove(): void {}

  async read(): Promise<Copied> {
    const { events, ...rest } = this.copied;
    const asOfNow = { ...rest, events: [...events] };
    this.onRead();
    await this.reading;
    return asOfNow;
  }
}

const openWith = (database: string, copy: LogCopy) =>
  new IdbStore(database, new SteadyClock(), copy);

export const COPY_CHECKS: readonly IdbCheck[] = [
  {
    name: "waits for its copy, and no more for one that does not answer until it does",
    async run(database) {
      let answer = () => {};
      const add = () =>
        new Promise<void>((done) => {
          answer = done;
        });
      const copy = { add, remove() {}, read: async () => ({ events: [] }) };
      const store = new IdbStore(database, new SteadyClock(), copy);
      const append = () => store.append([draft()]);
      const first = append();
      assertEqual(await isDoneSoon(first), false, "before the copy has it");
      answer();
      assertEqual(await isDoneSoon(first), true, "once the copy has it");
      await append();
      assertEqual(await isDoneSoon(append()), true, "after one that came to nothing");
      answer();
      await Promise.resolve();
      assertEqual(await isDoneSoon(append()), false, "after it answered again");
    },
  },
  {
    name: "stores nothing of what was given up while its copy was still being read",
    async run(database) {
      const copy = new ScriptedCopy();
      let goOn = () => {};
      copy.reading = new Promise<void>((done) => {
        goOn = done;
      });
      const store = openWith(database, copy);
      const stop = new AbortController();
      const appending = store.append([draft()], stop.signal);
      stop.abort();
      goOn();
      await assertTrouble(appending, "aborted");
      assertEqual(await store.session("s"), [], "events");
      assertEqual(await store.lastWritten(), undefined, "last written");
    },
  },
  {
    name: "has in its copy again what was deleted and put back",
    async run(database) {
      const copy = new ScriptedCopy();
      const store = openWith(database, copy);
      const said = await store.append([draft(), draft()]);
      const removed = await store.remove("s");
      copy.copied.events = [];
      await store.bringBack(removed);
      const ids = (events: readonly LogEvent[]) => events.map(({ id }) => id).sort();
      assertEqual(ids(copy.copied.events), ids(said), "copied");
    },
  },
  {
    name: "is filled from its copy while it is empty, and goes on numbering",
    async run(database) {
      const copy = new ScriptedCopy();
      const before = openWith(`${database}, thrown away`, copy);
      await before.append([draft()]);
      const [last] = await before.append([draft("t")]);
      await before.put([event("theirs", "u", 1)]);
      const store = openWith(database, copy);
      assertEqual((await store.everything()).length, 3, "events");
      assertEqual(await store.lastWritten(), { event: last?.id, session: "t" }, "last written");
      assertEqual(
        (await store.digests()).map(({ session }) => session).sort(),
        ["s", "t", "u"],
        "digests",
      );
      const [next] = await store.append([draft()]);
      assertEqual([next?.device, next?.seq], [last?.device, 3], "next number");
    },
  },
  {
    name: "is not filled with what was deleted, whatever its copy still has, and keeps its numbers",
    async run(database) {
      const copy = new ScriptedCopy();
      const before = openWith(database, copy);
      const [first] = await before.append([draft()]);
      await before.append([draft()]);
      await before.remove("s");
      before.close();
      copy.copied.events = [...copy.copied.events.slice(0, 1), event("theirs", "t", 1)];
      const store = openWith(database, copy);
      assertEqual(
        (await store.everything()).map(({ id }) => id),
        ["theirs"],
        "events",
      );
      assertEqual(
        (await store.digests()).map(({ session }) => session),
        ["t"],
        "digests",
      );
      const [next] = await store.append([draft()]);
      assertEqual([next?.device, next?.seq], [first?.device, 3], "next number");
    },
  },
  {
    name: "is filled once, though two tabs find it empty and one writes on",
    async run(database) {
      const copy = new ScriptedCopy();
      await openWith(`${database}, thrown away`, copy).append([draft()]);
      const [here, there] = [openWith(database, copy), openWith(database, copy)];
      let letGo = () => {};
      const isReading = new Promise<void>((begun) => {
        copy.onRead = begun;
      });
      copy.reading = new Promise<void>((done) => {
        letGo = done;
      });
      const reading = there.session("s");
      await isReading;
      copy.reading = Promise.resolve();
      const [second] = await here.append([draft()]);
      letGo();
      await reading;
      const [third] = await there.append([draft()]);
      assertEqual([second?.seq, third?.seq], [2, 3], "numbers");
      assertEqual((await here.session("s")).length, 3, "events");
    },
  },
  {
    name: "stores though its copy is never read to the end",
    async run(database) {
      const copy = new ScriptedCopy();
      copy.reading = new Promise(() => {});
      const { setTimeout: later } = window;
      // No waiting for what is given seconds.
      const soon = ((work: () => void) => later(work)) as unknown as typeof setTimeout;
      await withMethod(
        window as { setTimeout: typeof setTimeout },
        "setTimeout",
        soon,
        async () => {
          assertEqual((await openWith(database, copy).append([draft()])).length, 1, "stored");
        },
      );
    },
  },
  {
    name: "copies too what a try before had stored that was cut off",
    async run(database) {
      const said = draft();
      await open(database).append([said]);
      const copy = new ScriptedCopy();
      const [stored] = await openWith(database, copy).append([said]);
      assertEqual(copy.copied, { events: [stored], device: stored?.device }, "copied");
    },
  },
  {
    name: "copies a log of an earlier version before it is brought up to date, and but once",
    async run(database) {
      await makeV1(database);
      const versions: (number | undefined)[] = [];
      class Watching extends ScriptedCopy {
        override async add(events: readonly LogEvent[], device?: string): Promise<void> {
          const known = await indexedDB.databases();
          versions.push(known.find(({ name }) => name === database)?.version);
          await super.add(events, device);
        }
      }
      const copy = new Watching();
      const [known] = V1_EVENTS;
      if (known) copy.copied.events.push(known);
      await openWith(database, copy).sessions();
      assertEqual(versions, [1], "versions when it was copied");
      assertEqual(copy.copied, { events: V1_EVENTS, device: V1_DEVICE.id }, "copied");
      await openWith(database, copy).sessions();
      assertEqual(versions, [1], "not again");
    },
  },
  {
    name: "brings a log of an earlier version up to date though it cannot be copied",
    async run(database) {
      const copy = new ScriptedCopy();
      copy.read = () => Promise.reject(new Error("no file can be read"));
      // So soon after it was read that what reads might still stand in the way, one time in three.
      for (const name of Array.from({ length: 20 }, (_, n) => `${database}-${n}`)) {
        await makeV1(name);
        assertEqual((await openWith(name, copy).sessions()).length, 2, "sessions");
      }
    },
  },
  {
    name: "makes a log where an earlier one is told of and gone",
    async run(database) {
      const told = indexedDB.databases;
      indexedDB.databases = async () => [{ name: database, version: 1 }];
      try {
        assertEqual(await openWith(database, new ScriptedCopy()).sessions(), [], "sessions");
      } finally {
        indexedDB.databases = told;
      }
    },
  },
];

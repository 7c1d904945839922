/** What only the store in IndexedDB must do: each check has a database of its own. */
import { SteadyClock } from "../../src/log/clock.ts";
import { IdbOutbox } from "../../src/log/idb-outbox.ts";
import { IdbStore } from "../../src/log/idb-store.ts";
import { OUTBOX_CONTRACT } from "../log/outbox-contract.ts";
import { assertEqual, assertTrouble, draft, event } from "../log/store-contract.ts";
import { makeV1, openRaw, V1_DEVICE, V1_EVENTS } from "./store-v1.ts";
import { makeV2 } from "./store-v2.ts";
import { makeV3 } from "./store-v3.ts";

export interface IdbCheck {
  name: string;
  run(database: string): Promise<void>;
}

export const open = (database: string) => new IdbStore(database, new SteadyClock());

/** Puts a record where events are, past the store. */
async function plant(database: string, ...records: object[]): Promise<void> {
  const db = await openRaw(database);
  const tx = db.transaction("events", "readwrite");
  for (const record of records) tx.objectStore("events").put(record);
  await new Promise((resolve, reject) => {
    tx.oncomplete = resolve;
    tx.onabort = () => reject(tx.error);
  });
  db.close();
}

/** Runs some work with a method of the browser's replaced, and puts it back. */
export async function withMethod<T extends object, K extends keyof T>(
  owner: T,
  name: K,
  replacement: T[K],
  work: () => Promise<void>,
): Promise<void> {
  const original = owner[name];
  owner[name] = replacement;
  try {
    await work();
  } finally {
    owner[name] = original;
  }
}

export const IDB_CHECKS: readonly IdbCheck[] = [
  ...OUTBOX_CONTRACT.map(({ name, run }) => ({
    name: `and its outbox ${name}`,
    run: (database: string) => run(open(database), new IdbOutbox(database)),
  })),
  {
    name: "keeps events and the device's numbers for the next start",
    async run(database) {
      const first = open(database);
      const [before] = await first.append([draft()]);
      first.close();
      const second = open(database);
      assertEqual((await second.session("s")).length, 1, "events");
      assertEqual(await second.lastWritten(), { event: before?.id, session: "s" }, "last written");
      const [after] = await second.append([draft()]);
      assertEqual([after?.device, after?.seq], [before?.device, 2], "device and number");
    },
  },
  {
    name: "goes on in time after a start with the clock set back an hour",
    async run(database) {
      const hourMs = 3_600_000;
      const [before] = await open(database).append([draft()]);
      let ticks = 0;
      const clock = new SteadyClock(
        () => Date.now() - hourMs,
        () => ticks,
      );
      const store = new IdbStore(database, clock);
      const [first] = await store.append([draft()]);
      ticks += 1000;
      const [second] = await store.append([draft()]);
      assertEqual((first?.at ?? 0) >= (before?.at ?? 0), true, "not before");
      assertEqual((second?.at ?? 0) - (first?.at ?? 0), 1000, "time passed");
    },
  },
  {
    name: "opens a log of version 1 with all that is in it, and goes on numbering",
    async run(database) {
      await makeV1(database);
      const store = open(database);
      const byId = (events: readonly { id: string }[]) =>
        [...events]
          .sort((a, b) => a.id.localeCompare(b.id))
          .map((one) => Object.entries(one).sort());
      assertEqual(byId(await store.everything()), byId(V1_EVENTS), "events");
      assertEqual(
        (await store.sessions()).map(({ id, firstAt, lastAt }) => [id, lastAt - firstAt]),
        [
          ["sunday", 0],
          ["saturday", 60_000],
        ],
        "sessions",
      );
      const listed = (await store.digests()).map(({ session }) => session).sort();
      assertEqual(listed, ["saturday", "sunday"], "digests");
      assertEqual(await store.lastWritten(), undefined, "last written, which was not kept then");
      const [next] = await store.append([draft()]);
      assertEqual([next?.device, next?.seq], [V1_DEVICE.id, V1_DEVICE.seq + 1], "next number");
      assertEqual((await store.lastWritten())?.event, next?.id, "last written");
    },
  },
  {
    name: "sets damaged records aside, counts them, and reads on",
    async run(database) {
      const store = open(database);
      const [sound] = await store.append([draft()]);
      await plant(
        database,
        { ...event("no time", "s", 1), at: "noon" },
        {
          ...event("nothing said", "s", 2),
          body: { kind: "entry", statement: { kind: "sandwich" } },
        },
        { id: "no session" },
        { ...event("odd session", "s", 3), session: 7 },
        { ...event("odd time", "s", 4), at: [1] },
      );
      assertEqual(
        (await store.sessions()).map((one) => one.id),
        ["s"],
        "sessions",
      );
      assertEqual(
        (await store.session("s")).map((one) => one.id),
        [sound?.id],
        "session",
      );
      assertEqual((await store.damaged()).length, 3, "damaged in the session");
      assertEqual((await store.everything()).length, 1, "everything");
      const damaged = await store.damaged();
      assertEqual(
        damaged.map(({ record }) => (record as { id: string }).id).sort(),
        ["no session", "no time", "nothing said", "odd session", "odd time"],
        "all damaged",
      );
      const [noTime] = damaged.filter(({ record }) => (record as { id: string }).id === "no time");
      assertEqual(noTime?.fault.startsWith("at: "), true, "fault");
      await store.everything();
      assertEqual((await store.damaged()).length, 5, "damaged after reading again");
    },
  },
  {
    name: "opens a log of version 2 and finds every session in it",
    async run(database) {
      const odd = [
        { id: "broken", session: "monday" },
        { ...event("odd", "s", 3), session: 7 },
      ];
      await makeV2(database, odd);
      const store = open(database);
      const found = (await store.digests()).map(({ session }) => session).sort();
      assertEqual(found, ["saturday", "sunday"], "sessions");
      assertEqual((await store.session("saturday")).length, 2, "events");
      const [next] = await store.append([draft()]);
      assertEqual([next?.device, next?.seq], [V1_DEVICE.id, V1_DEVICE.seq + 1], "next number");
      assertEqual((await store.removals()).length, 0, "removals");
    },
  },
  ...[false, true].map((withOutbox) => ({
    name: `opens a log of version 3, ${withOutbox ? "as it was at last" : "as it first was"}`,
    async run(database: string) {
      await makeV3(database, withOutbox);
      const store = open(database);
      assertEqual((await store.session("saturday")).length, 2, "events");
      assertEqual((await store.digests()).length, 2, "digests");
      assertEqual(await store.removals(), ["friday"], "removals");
      const outbox = new IdbOutbox(database);
      await outbox.join({ board: "b" }, "empty");
      const [next] = await store.append([draft()]);
      assertEqual([next?.device, next?.seq], [V1_DEVICE.id, V1_DEVICE.seq + 1], "next number");
      assertEqual((await outbox.waiting(9))[0]?.event?.id, next?.id, "waiting");
    },
  })),
  {
    name: "takes out and brings back what was damaged along with its session",
    async run(database) {
      const store = open(database);
      await store.put([event("a", "s", 1), event("b", "other", 2)]);
      await plant(database, { ...event("no time", "s", 1), at: "noon" });
      await store.everything();
      assertEqual((await store.damaged()).length, 1, "damaged");
      const removed = await store.remove("s");
      assertEqual((await store.damaged()).length, 0, "damaged afterwards");
      assertEqual(
        (await store.everything()).map(({ id }) => id),
        ["b"],
        "events afterwards",
      );
      await store.bringBack(removed);
      assertEqual((await store.damaged()).length, 1, "damaged again");
    },
  },
  {
    name: "tells other tabs of a session taken out",
    async run(database) {
      const [here, there] = [open(database), open(database)];
      await here.put([event("a", "s", 1)]);
      const told = new Promise<string>((resolve) => there.subscribeRemovals(resolve));
      await here.remove("s");
      assertEqual(await told, "s", "told");
      assertEqual(await there.session("s"), [], "events");
    },
  },
  {
    name: "tells of nothing that a tab of another version sends and is no event",
    async run(database) {
      const [here, there, odd] = [open(database), open(database), new BroadcastChannel(database)];
      const told: unknown[] = [];
      here.subscribe((events) => told.push(events.map(({ id }) => id)));
      here.subscribeRemovals((session) => told.push(session));
      for (const message of ["new", [{ id: "x" }], { removed: 7 }]) odd.postMessage(message);
      await there.put([event("a", "s", 1)]);
      const followed = new Promise<string>((resolve) => here.subscribeRemovals(resolve));
      await there.remove("s");
      await followed;
      odd.close();
      assertEqual(told, [["a"], "s"], "told");
    },
  },
  {
    name: "sets a damaged record aside once, though two tabs find it at the same time",
    async run(database) {
      const both = [open(database), open(database)];
      await both[0]?.put([event("a", "s", 1)]);
      await plant(database, { ...event("no time", "s", 1), at: "noon" });
      await Promise.all(both.map((store) => store.session("s")));
      assertEqual((await both[0]?.damaged())?.length, 1, "damaged");
    },
  },
  {
    name: "takes a version 1 log with a damaged record in it",
    async run(database) {
      await makeV1(database, [{ id: "broken", session: "saturday" }]);
      const store = open(database);
      assertEqual((await store.session("saturday")).length, 2, "events");
      assertEqual((await store.damaged()).length, 1, "damaged");
    },
  },
  {
    name: "all of one utterance or nothing",
    async run(database) {
      const store = open(database);
      const uncloneable = draft("s", { group: (() => {}) as unknown as string });
      await assertTrouble(store.append([draft(), uncloneable]), "unknown");
      assertEqual(await store.session("s"), [], "events");
      assertEqual((await store.append([draft()]))[0]?.seq, 1, "next number");
    },
  },
  {
    name: "asks for strict durability and resolves after the transaction, not before",
    async run(database) {
      const store = open(database);
      await store.sessions();
      const { transaction } = IDBDatabase.prototype;
      const steps: string[] = [];
      await withMethod(
        IDBDatabase.prototype,
        "transaction",
        function (this: IDBDatabase, names, mode, options) {
          const tx = transaction.call(this, names, mode, options);
          steps.push(`${mode} ${tx.durability}`);
          tx.addEventListener("complete", () => steps.push("complete"));
          return tx;
        },
        async () => {
          await store.append([draft()]);
          steps.push("resolved");
        },
      );
      assertEqual(steps, ["readwrite strict", "complete", "resolved"], "steps");
    },
  },
  {
    name: "comes back after the connection was cut",
    async run(database) {
      const cut: IDBDatabase[] = [];
      const { transaction } = IDBDatabase.prototype;
      const store = open(database);
      await store.append([draft()]);
      await withMethod(
        IDBDatabase.prototype,
        "transaction",
        function (this: IDBDatabase, ...args) {
          if (cut.length === 0) {
            cut.push(this);
            this.close();
          }
          return transaction.apply(this, args);
        },
        async () => {
          assertEqual((await store.append([draft()]))[0]?.seq, 2, "number");
        },
      );
      assertEqual(cut.length, 1, "cuts");
      assertEqual((await store.session("s")).length, 2, "events");
    },
  },
  {
    name: "gives up after the second try",
    async run(database) {
      const store = open(database);
      await store.append([draft()]);
      let tries = 0;
      await withMethod(
        IDBDatabase.prototype,
        "transaction",
        () => {
          tries += 1;
          throw new DOMException("gone", "InvalidStateError");
        },
        () => assertTrouble(store.append([draft()]), "closed"),
      );
      assertEqual(tries, 2, "tries");
    },
  },
  {
    name: "says when there is no room, and stores again once there is",
    async run(database) {
      const store = open(database);
      await withMethod(
        IDBObjectStore.prototype,
        "add",
        () => {
          throw new DOMException("full", "QuotaExceededError");
        },
        () => assertTrouble(store.append([draft()]), "quota"),
      );
      assertEqual((await store.append([draft()]))[0]?.seq, 1, "number");
    },
  },
  {
    name: "says when the browser refuses to store",
    async run(database) {
      const refuse = () => {
        throw new DOMException("no", "SecurityError");
      };
      const store = open(database);
      await withMethod(IDBFactory.prototype, "open", refuse, () =>
        assertTrouble(store.append([draft()]), "refused"),
      );
      assertEqual((await store.append([draft()])).length, 1, "once allowed");
    },
  },
  {
    name: "makes way for another tab with a newer log, and says so afterwards",
    async run(database) {
      const store = open(database);
      await store.append([draft()]);
      const newer = await openRaw(database, 99);
      await assertTrouble(store.append([draft()]), "blocked");
      newer.close();
    },
  },
  {
    name: "says when another tab keeps an older log open, and goes on once it is closed",
    async run(database) {
      await makeV1(database);
      const older = await openRaw(database, 1);
      const store = open(database);
      await assertTrouble(store.append([draft()]), "blocked");
      await assertTrouble(store.session("saturday"), "blocked");
      older.close();
      for (let tries = 0; tries < 50; tries++) {
        const events = await store.session("saturday").catch(() => []);
        if (events.length === 2) return;
        await new Promise((resolve) => setTimeout(resolve, 20));
      }
      throw new Error("it did not go on");
    },
  },
];

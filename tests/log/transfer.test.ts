import { expect, test } from "vitest";
import { SteadyClock } from "../../src/log/clock.ts";
import type { LogEvent } from "../../src/log/event.ts";
import { MemoryStore } from "../../src/log/memory-store.ts";
import { Refusal } from "../../src/log/refusal.ts";
import { exportLog, mergeEvents, readDocument } from "../../src/log/transfer.ts";
import { FailingStore } from "./failing-store.ts";
import { draft, event } from "./store-contract.ts";

const newStore = () => new MemoryStore(new SteadyClock());

async function exported(): Promise<{ store: MemoryStore; text: string }> {
  const store = newStore();
  await store.append([draft(), draft("another")]);
  return { store, text: JSON.stringify(await exportLog({ store, unsaved: [], now: 1000 })) };
}

const importText = (store: MemoryStore, text: string) =>
  mergeEvents(store, readDocument(text).events);

test("what goes out comes in, and only once", async () => {
  const { store, text } = await exported();
  const other = newStore();
  await other.append([draft()]);
  expect(await importText(other, text)).toEqual({ added: 2, known: 0, takenOut: [] });
  expect(await importText(other, text)).toEqual({ added: 0, known: 2, takenOut: [] });
  expect(await other.everything()).toHaveLength(3);
  expect(await other.everything()).toEqual(expect.arrayContaining(await store.everything()));
});

test("one session goes out alone", async () => {
  const { store } = await exported();
  const { events } = await exportLog({
    store,
    unsaved: [event("a", "s", 1), event("b", "another", 1)],
    now: 1000,
    session: "s",
  });
  expect(events.map(({ session }) => session)).toEqual(["s", "s"]);
});

test("one session goes out alone also where what is stored cannot be read", async () => {
  const store = new FailingStore(new SteadyClock(), "refused");
  const unsaved = [event("a", "s", 1), event("b", "another", 1)];
  const document = await exportLog({ store, unsaved, now: 1000, session: "s" });
  expect(document.events.map(({ id }) => id)).toEqual(["a"]);
});

test("a session that was taken out on purpose stays out, and is named", async () => {
  const { store, text } = await exported();
  await store.remove("another");
  expect(await importText(store, text)).toEqual({ added: 0, known: 1, takenOut: ["another"] });
  expect(await store.session("another")).toEqual([]);
  await store.readmit(["another"]);
  expect(await importText(store, text)).toEqual({ added: 1, known: 1, takenOut: [] });
});

test("what is unsaved goes out too, once", async () => {
  const { store } = await exported();
  const [stored] = await store.everything();
  const unsaved = [event("a", "s", 1), ...(stored ? [stored] : [])];
  const document = await exportLog({ store, unsaved, now: 1000 });
  expect(document.events.map((one) => one.id).filter((id) => id === "a")).toHaveLength(1);
  expect(document.events).toHaveLength(3);
});

test("what is unsaved gets out even when the store cannot be read", async () => {
  const store = new FailingStore(new SteadyClock(), "refused");
  const document = await exportLog({ store, unsaved: [event("a", "s", 1)], now: 1000 });
  expect(document.events).toEqual([event("a", "s", 1)]);
  expect(document.incomplete).toContain("private browsing");
  expect(await importText(newStore(), JSON.stringify(document))).toHaveProperty("added", 1);
});

test("damaged records go out as they are, even where JSON cannot hold them", async () => {
  const store = newStore();
  const records = [{ id: "a", weight: 10n }, { id: "b" }];
  store.damaged = async () => records.map((record) => ({ record, fault: "v: missing" })) as never;
  const text = JSON.stringify(await exportLog({ store, unsaved: [], now: 1000 }));
  expect(JSON.parse(text).damaged).toEqual([
    { record: "[object Object]", fault: "v: missing" },
    { record: { id: "b" }, fault: "v: missing" },
  ]);
  expect(readDocument(text).damaged).toHaveLength(2);
});

test("damaged records go out that only reading the events has found", async () => {
  const store = newStore();
  const found: never[] = [];
  store.everything = async () => {
    found.push({ record: { id: "a" }, fault: "v: missing" } as never);
    return [];
  };
  store.damaged = async () => [...found] as never;
  expect((await exportLog({ store, unsaved: [], now: 1000 })).damaged).toHaveLength(1);
});

test("how the phone is set goes out with the whole", async () => {
  const settings = { weight: "kg" };
  const text = JSON.stringify(
    await exportLog({ store: newStore(), unsaved: [], now: 1000, settings }),
  );
  expect(readDocument(text).settings).toEqual(settings);
});

test.each([
  ["", "not a file that Pegscribe wrote"],
  ["{", "not a file that Pegscribe wrote"],
  ["null", "not a file that Pegscribe wrote"],
  ["[]", "not a file that Pegscribe wrote"],
  ['{"format":"something"}', "not a file that Pegscribe wrote"],
  ['{"format":"pegscribe-log","version":1,"exp', "cut off"],
  ['{"format":"pegscribe-log","version":2}', "newer Pegscribe"],
  ['{"format":"pegscribe-log","version":1}', "damaged at exportedAt"],
])("refuses %s", (text, sentence) => {
  expect(() => readDocument(text)).toThrow(Refusal);
  expect(() => readDocument(text)).toThrow(sentence);
});

test("one bad event refuses the whole file and says where it is", async () => {
  const { text } = await exported();
  const document = JSON.parse(text);
  document.events[1].body.statement.kind = "sandwich";
  expect(() => readDocument(JSON.stringify(document))).toThrow("events.1.body.statement.kind");
});

test.each([-1, 8e15, 1e300])("an event at %d is no event of any day", async (at) => {
  const store = newStore();
  const events: LogEvent[] = [event("a", "s", 1), event("b", "s", at)];
  await expect(mergeEvents(store, events)).rejects.toThrow("Record 2");
  expect(await store.everything()).toEqual([]);
});

test("a weight beyond all numbers is refused, however deep it lies", async () => {
  const store = newStore();
  const fish = (weightG: number) => ({
    ...event("b", "s", 2),
    body: { kind: "entry" as const, statement: { kind: "fish" as const, weightG } },
  });
  await expect(mergeEvents(store, [event("a", "s", 1), fish(1e300)])).rejects.toThrow("Record 2");
  const frozen = { kind: "entry", statement: { kind: "conditions", airC: -1e300 } } as const;
  await expect(mergeEvents(store, [{ ...fish(900), body: frozen }])).rejects.toThrow("Record 1");
  expect(await mergeEvents(store, [fish(900)])).toHaveProperty("added", 1);
});

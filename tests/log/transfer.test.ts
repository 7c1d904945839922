import { expect, test } from "vitest";
import { SteadyClock } from "../../src/log/clock.ts";
import { MemoryStore } from "../../src/log/memory-store.ts";
import { exportLog, ImportRefused, importLog } from "../../src/log/transfer.ts";
import { FailingStore } from "./failing-store.ts";
import { draft, event } from "./store-contract.ts";

const newStore = () => new MemoryStore(new SteadyClock());

async function exported(): Promise<{ store: MemoryStore; text: string }> {
  const store = newStore();
  await store.append([draft(), draft("another")]);
  return { store, text: JSON.stringify(await exportLog(store, [], 1000)) };
}

test("what goes out comes in, and only once", async () => {
  const { store, text } = await exported();
  const other = newStore();
  await other.append([draft()]);
  expect(await importLog(other, text)).toEqual({ added: 2, known: 0, damaged: 0 });
  expect(await importLog(other, text)).toEqual({ added: 0, known: 2, damaged: 0 });
  expect(await other.everything()).toHaveLength(3);
  expect(await other.everything()).toEqual(expect.arrayContaining(await store.everything()));
});

test("what is unsaved goes out too, once", async () => {
  const { store } = await exported();
  const [stored] = await store.everything();
  const unsaved = [event("a", "s", 1), ...(stored ? [stored] : [])];
  const document = await exportLog(store, unsaved, 1000);
  expect(document.events.map((one) => one.id).filter((id) => id === "a")).toHaveLength(1);
  expect(document.events).toHaveLength(3);
});

test("what is unsaved gets out even when the store cannot be read", async () => {
  const store = new FailingStore(new SteadyClock(), "refused");
  const document = await exportLog(store, [event("a", "s", 1)], 1000);
  expect(document.events).toEqual([event("a", "s", 1)]);
  expect(document.incomplete).toContain("private browsing");
  expect(await importLog(newStore(), JSON.stringify(document))).toHaveProperty("added", 1);
});

test("damaged records go out as they are, even where JSON cannot hold them", async () => {
  const store = newStore();
  const records = [{ id: "a", weight: 10n }, { id: "b" }];
  store.damaged = async () => records.map((record) => ({ record, fault: "v: missing" })) as never;
  const text = JSON.stringify(await exportLog(store, [], 1000));
  expect(JSON.parse(text).damaged).toEqual([
    { record: "[object Object]", fault: "v: missing" },
    { record: { id: "b" }, fault: "v: missing" },
  ]);
  expect(await importLog(newStore(), text)).toEqual({ added: 0, known: 0, damaged: 2 });
});

test.each([
  ["", "not a Pegscribe log"],
  ["{", "not a Pegscribe log"],
  ["null", "not a Pegscribe log"],
  ["[]", "not a Pegscribe log"],
  ['{"format":"something"}', "not a Pegscribe log"],
  ['{"format":"pegscribe-log","version":2}', "newer Pegscribe"],
  ['{"format":"pegscribe-log","version":1}', "damaged at exportedAt"],
])("refuses %s", async (text, sentence) => {
  const store = newStore();
  const refusal = importLog(store, text);
  await expect(refusal).rejects.toThrow(ImportRefused);
  await expect(refusal).rejects.toThrow(sentence);
});

test("one bad event refuses the whole file and says where it is", async () => {
  const { text } = await exported();
  const document = JSON.parse(text);
  document.events[1].body.statement.kind = "sandwich";
  const store = newStore();
  await expect(importLog(store, JSON.stringify(document))).rejects.toThrow(
    "events.1.body.statement.kind",
  );
  expect(await store.everything()).toEqual([]);
});

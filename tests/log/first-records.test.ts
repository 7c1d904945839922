import * as v from "valibot";
import { expect, test } from "vitest";
import { SteadyClock } from "../../src/log/clock.ts";
import { eventSchema } from "../../src/log/event.ts";
import { foldSession } from "../../src/log/fold.ts";
import { MemoryStore } from "../../src/log/memory-store.ts";
import { mergeEvents, readDocument } from "../../src/log/transfer.ts";
import { FIRST_EXPORT, FIRST_RECORDS } from "./first-records.ts";

test("whatever the first version let be stored is read as it was", () => {
  for (const record of FIRST_RECORDS) expect(v.parse(eventSchema, record)).toEqual(record);
});

test("what the first version exported is taken in, and makes a session", async () => {
  const store = new MemoryStore(new SteadyClock());
  const { events, damaged } = readDocument(JSON.stringify(FIRST_EXPORT));
  expect(damaged).toEqual(FIRST_EXPORT.damaged);
  expect((await mergeEvents(store, events)).added).toBe(FIRST_RECORDS.length);
  expect(await store.everything()).toEqual(FIRST_RECORDS);
  const { entries } = foldSession("saturday", events);
  const kinds = ["change", "conditions", "drop", "feed", "fish", "loss", "net", "note", "remind"];
  expect([...new Set(entries.map(({ statement }) => statement.kind))].sort()).toEqual([
    ...kinds,
    "session",
    "sign",
  ]);
});

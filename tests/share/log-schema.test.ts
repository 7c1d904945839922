import { readFileSync } from "node:fs";
import Ajv2020 from "ajv/dist/2020.js";
import fc from "fast-check";
import { expect, test } from "vitest";
import { SteadyClock } from "../../src/log/clock.ts";
import { MemoryStore } from "../../src/log/memory-store.ts";
import { logFile } from "../../src/share/log-files.ts";
import { entry } from "../log/session-script.ts";
import { LOG_SCHEMA_FILE, logSchema } from "../tools/log-schema.ts";
import { day } from "./days.ts";

const published = readFileSync(LOG_SCHEMA_FILE, "utf8");
const isLog = new Ajv2020({ allErrors: true }).compile(JSON.parse(published));

const saved = async (store: MemoryStore) => {
  const settings = { weight: "kg" };
  const { file } = await logFile("json", { store, unsaved: [], now: 1000, settings });
  return JSON.parse(await file.text());
};

test("what is published is what the app reads by (else: npm run schema)", () => {
  expect(JSON.parse(published)).toEqual(logSchema());
});

test("every log that the app writes agrees with it", async () => {
  await fc.assert(
    fc.asyncProperty(day, async (events) => {
      const store = new MemoryStore(new SteadyClock());
      await store.put(events);
      isLog(await saved(store));
      expect(isLog.errors ?? []).toEqual([]);
    }),
    { numRuns: 100 },
  );
});

test.each<[string, (log: Record<string, never>) => unknown]>([
  ["another format", (log) => ({ ...log, format: "other" })],
  ["a newer version", (log) => ({ ...log, version: 2 })],
  ["no events", ({ events: _, ...log }) => log],
  ["an event without a time", (log) => ({ ...log, events: [{ ...EVENT, at: undefined }] })],
  ["a weight below nothing", (log) => ({ ...log, events: [fish({ weightG: -1 })] })],
  ["half a count", (log) => ({ ...log, events: [fish({ count: 1.5 })] })],
  [
    "a question as an entry",
    (log) => ({
      ...log,
      events: [{ ...EVENT, body: { kind: "entry", statement: { kind: "ask", what: "total" } } }],
    }),
  ],
])("it refuses %s", async (_, change) => {
  const log = await saved(new MemoryStore(new SteadyClock()));
  expect(isLog({ ...log, events: [EVENT] })).toBe(true);
  expect(isLog(JSON.parse(JSON.stringify(change(log))))).toBe(false);
});

const EVENT = entry(1, { kind: "fish", weightG: 900 });
const fish = (fields: object) => ({
  ...EVENT,
  body: { kind: "entry", statement: { kind: "fish", ...fields } },
});

/**
 * What the first version that passed anything on has written, kept as it wrote it: a log, a table and
 * two links of one day in which everything that could be said was. None of it is ever made anew.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import * as v from "valibot";
import { expect, test } from "vitest";
import { SteadyClock } from "../../src/log/clock.ts";
import { eventSchema } from "../../src/log/event.ts";
import { foldSession } from "../../src/log/fold.ts";
import { MemoryStore } from "../../src/log/memory-store.ts";
import { readDocument } from "../../src/log/transfer.ts";
import { readEventsCsv } from "../../src/share/csv/events-csv.ts";
import { readCode } from "../../src/share/link/link.ts";
import { takeIn } from "../../src/share/take-in.ts";

const kept = (name: string) =>
  readFileSync(fileURLToPath(new URL(`old-files/${name}`, import.meta.url)), "utf8");

const log = kept("log-1.json");
const links = JSON.parse(kept("links-1.json"));
const { events } = JSON.parse(log);

test("a log of the first version is read without the least change", () => {
  expect(readDocument(log)).toEqual(JSON.parse(log));
});

test("a table of the first version holds the same events", () => {
  expect(readEventsCsv(kept("events-1.csv"))).toEqual(events);
});

test("both are taken in, and are one session", async () => {
  const store = new MemoryStore(new SteadyClock());
  for (const name of ["log-1.json", "events-1.csv"]) {
    expect(await takeIn(store, new Blob([kept(name)]))).toHaveProperty("log.sessions", 1);
  }
  const stored = await store.everything();
  expect(stored).toEqual(events);
  const { count, spokenG, nets, state, plan } = foldSession("saturday", stored);
  expect({ count, state }).toEqual({ count: 10, state: "ended" });
  expect(spokenG).toBeCloseTo(10_521.748, 3);
  expect(nets.map(({ number, weighedG }) => [number, weighedG])).toEqual([
    [1, 4100],
    [2, undefined],
  ]);
  expect(plan).toMatchObject({ water: "Osier Lake", endsAt: events[0].body.plan.endsAt });
});

test("links of the first version say what they said", async () => {
  const { session, now } = await readCode(links.full);
  expect(now).toBe(links.now);
  expect(session?.plan).toEqual(links.plan);
  expect(
    session?.entries.map(({ at, verdict, statement, net }) => ({ at, verdict, statement, net })),
  ).toEqual(links.entries);
  expect((await readCode(links.brief)).summary).toMatchObject(links.summary);
});

test("what was as long or as large as it could be then is still an event", () => {
  const [id, name, text, line] = [64, 80, 2000, 10_000].map((length) => "x".repeat(length));
  const event = {
    ...{ v: 1, id, session: id, device: id, seq: 1, at: 0, group: id, verdict: "check" },
    heard: { text: line, alternatives: Array(5).fill(line), by: "web" },
  };
  const stated = (statement: object) => ({ ...event, body: { kind: "entry", statement } });
  for (const one of [
    stated({ kind: "note", text }),
    stated({ kind: "remind", everyMs: 0, about: text }),
    stated({ kind: "fish", species: name, count: 10_000 }),
    { ...event, body: { kind: "plan", plan: { water: line, peg: line, notes: line } } },
    { ...event, body: { kind: "plan", plan: { ownBaits: [{ name, spoken: [name] }] } } },
  ]) {
    expect(v.parse(eventSchema, one)).toEqual(one);
  }
});

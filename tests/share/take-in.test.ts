import { beforeEach, describe, expect, test } from "vitest";
import { SteadyClock } from "../../src/log/clock.ts";
import type { LogEvent } from "../../src/log/event.ts";
import { MemoryStore } from "../../src/log/memory-store.ts";
import { NOTHING_ALLOWED } from "../../src/share/allowed.ts";
import { makeCode } from "../../src/share/link/link.ts";
import { type LogForm, logFile } from "../../src/share/log-files.ts";
import { takeIn } from "../../src/share/take-in.ts";
import { at, sessionOf } from "../analysis/fixtures/session.ts";
import { entry } from "../log/session-script.ts";

const EVENTS: LogEvent[] = [
  entry(1, { kind: "session", act: "start" }),
  entry(2, { kind: "fish", species: "carp", weightG: 907.18474, unit: { weight: "lb" } }),
  entry(3, { kind: "note", text: "½ past nine – topping" }),
];

let store: MemoryStore;
beforeEach(async () => {
  store = new MemoryStore(new SteadyClock());
  await store.put(EVENTS);
});

const newStore = () => new MemoryStore(new SteadyClock());
const written = async (form: LogForm) =>
  (await logFile(form, { store, unsaved: [], now: at(0), settings: { weight: "kg" } })).file;

describe("what was saved", () => {
  test.each(["json", "events"] as const)("as %s is taken in, once", async (form) => {
    const file = await written(form);
    const other = newStore();
    expect(await takeIn(other, file)).toMatchObject({ log: { added: 3, known: 0, sessions: 1 } });
    expect(await takeIn(other, file)).toMatchObject({ log: { added: 0, known: 3 } });
    expect(await other.everything()).toEqual(EVENTS);
  });

  test("as both is still one log, with the settings beside it", async () => {
    const other = newStore();
    await takeIn(other, await written("events"));
    const result = await takeIn(other, await written("json"));
    expect(result).toMatchObject({ log: { added: 0, known: 3, settings: { weight: "kg" } } });
  });

  test("as a summary's link in a file is opened, not taken in", async () => {
    const code = await makeCode(sessionOf([]), at(1), { allowed: NOTHING_ALLOWED, form: "full" });
    const file = new Blob([`https://bank.example/#${code}`]);
    expect(await takeIn(store, file)).toEqual({ shared: code });
  });

  test.each(["json", "events"] as const)(
    "as %s with a link in a note is a log, no link",
    async (form) => {
      await store.put([entry(4, { kind: "note", text: "his: https://bank.example/#v1.abc" })]);
      expect(await takeIn(newStore(), await written(form))).toMatchObject({ log: { added: 4 } });
    },
  );

  test("is taken in whole, however long the table, and whatever stands in lines of it", async () => {
    const line = 'say "so",\r\n';
    const notes = Array.from({ length: 3000 }, (_, n) =>
      entry(n + 4, { kind: "note", text: line.repeat(150) }),
    );
    await store.put(notes);
    const file = await written("events");
    expect(file.size).toBeGreaterThan(5_000_000);
    const other = newStore();
    await takeIn(other, file);
    expect(await other.everything()).toEqual([...EVENTS, ...notes]);
  });

  test("is taken in whatever brackets stand in its notes", async () => {
    const deep = "[{".repeat(100);
    const texts = [deep, `"${deep}`, `\\"${deep}`, `${deep}\\`, ...Array(70).fill("]")];
    await store.put(texts.map((text, n) => entry(n + 4, { kind: "note", text })));
    const other = newStore();
    expect(await takeIn(other, await written("json"))).toMatchObject({ log: { added: 77 } });
    expect(await other.everything()).toEqual(await store.everything());
  });

  test("is taken in from UTF-16 too, as some spreadsheets write it", async () => {
    const csv = (await (await written("events")).text()).replace("\uFEFF", "");
    const wide = new Uint16Array([...`\uFEFF${csv}`].map((letter) => letter.charCodeAt(0)));
    expect(await takeIn(newStore(), new Blob([wide]))).toMatchObject({ log: { added: 3 } });
  });
});

const logWith = (more: string) =>
  `{"format":"pegscribe-log","version":1,"exportedAt":0,"events":[],"damaged":[],"more":${more}}`;
const withPlan = (plan: object) => ({ ...EVENTS[0], id: "plan", body: { kind: "plan", plan } });

describe("what is refused says why, and changes nothing", () => {
  const json = async (change: (log: { events: Record<string, unknown>[] }) => void) => {
    const log = JSON.parse(await (await written("json")).text());
    change(log);
    return JSON.stringify(log);
  };
  const manyWords = (written: (word: string) => string) =>
    Array.from({ length: 500_000 }, (_, n) => written(n.toString(36))).join(",");
  const big = { size: 100_000_000, arrayBuffer: () => Promise.reject(new Error("was opened")) };

  test.each<[string, () => Promise<BlobPart> | BlobPart, RegExp]>([
    ["an empty file", () => "", /not a file that Pegscribe wrote/],
    ["a letter to somebody", () => "Dear all", /not a file that Pegscribe wrote/],
    ["another program's JSON", () => '{"fish":[1,2]}', /not a file that Pegscribe wrote/],
    ["a list of somebody's", () => "name;age\nx;1", /other columns/],
    ["the table of fish", async () => written("fish"), /table of fish/],
    ["a log cut off", async () => (await (await written("json")).text()).slice(0, -9), /cut off/],
    ["a newer log", () => '{"format":"pegscribe-log","version":9}', /newer Pegscribe/],
    ["a picture", () => new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0xff]), /not text in UTF-8/],
    ["Latin-1", () => new Uint8Array([0x4a, 0xf6, 0x72, 0x67]), /not text in UTF-8/],
    [
      "a log with one bad event",
      () => json(({ events }) => void events.push({ ...EVENTS[0], id: "new", at: "noon" })),
      /damaged at events\.3\.at/,
    ],
    [
      "a log with a weight beyond all",
      () =>
        json(
          ({ events }) =>
            void events.push(
              { ...EVENTS[1], id: "good" },
              {
                ...EVENTS[1],
                id: "bad",
                body: { kind: "entry", statement: { kind: "fish", weightG: 1e300 } },
              },
            ),
        ),
      /Record 5 .* can’t be/,
    ],
    [
      "a log with half a letter in an id",
      () => json(({ events }) => void events.push({ ...EVENTS[0], id: "\ud800" })),
      /damaged at events\.3\.id/,
    ],
    [
      "a log with an id as long as a sentence",
      () => json(({ events }) => void events.push({ ...EVENTS[0], session: "s".repeat(65) })),
      /damaged at events\.3\.session/,
    ],
    [
      "a log with a shift beyond all",
      () =>
        json(
          ({ events }) =>
            void events.push({
              ...EVENTS[1],
              id: "bad",
              body: { kind: "entry", statement: { kind: "change", depthByMm: -1e300 } },
            }),
        ),
      /Record 4 .* can’t be/,
    ],
    [
      "a log with thousands of rigs in one plan",
      () =>
        json(
          ({ events }) =>
            void events.push(withPlan({ rigs: Array(1000).fill({ name: "x", shots: [] }) })),
        ),
      /Record 4 .* more than Pegscribe ever writes in one/,
    ],
    [
      "a log with a name as long as a book",
      () =>
        json(
          ({ events }) =>
            void events.push(withPlan({ baitLimitsG: { ["x".repeat(4_000_000)]: 1 } })),
        ),
      /Record 4 .* more than Pegscribe ever writes in one/,
    ],
    [
      "a log with lists in lists in lists",
      () => logWith(`${"[".repeat(100)}${"]".repeat(100)}`),
      /cut off or damaged/,
    ],
    [
      "a log with more in it than any",
      () => logWith(`[${"{},".repeat(4e6)}0]`),
      /cut off or damaged/,
    ],
    [
      "a log with more different names of fields than any",
      () => logWith(`[{${manyWords((word) => `"a longer ${word}" : 1`)}}]`),
      /cut off or damaged/,
    ],
    [
      "a log with more different short texts than any",
      () => logWith(`[${manyWords((word) => `"${word}"`)}]`),
      /cut off or damaged/,
    ],
    [
      "a table with a row as long as a book",
      async () => (await (await written("events")).text()).replace("topping", "x".repeat(9e6)),
      /^Row 4 .* is cut off/,
    ],
    ["a link as long as a book", () => `#v1.${"A".repeat(500_000)}`, /link is far too long/],
    [
      "a table by its first row that is no good, whatever comes after",
      async () =>
        (await (await written("events")).text()).replace(",907", ",heavy").concat('"torn'),
      /^Row 3 /,
    ],
  ])("%s", async (_, content, sentence) => {
    await expect(takeIn(store, new Blob([await content()]))).rejects.toThrow(sentence);
    expect(await store.everything()).toEqual(EVENTS);
  });

  test("a file of 100 MB, unopened", async () => {
    await expect(takeIn(store, big as unknown as Blob)).rejects.toThrow(
      /100 MB, more than any log/,
    );
  });

  test("a file that the phone can't read", async () => {
    const gone = { size: 9, arrayBuffer: () => Promise.reject(new Error("gone")) };
    await expect(takeIn(store, gone as unknown as Blob)).rejects.toThrow(
      /could not read this file/,
    );
  });

  test("nothing where storing fails in the middle", async () => {
    const other = newStore();
    other.put = () => Promise.reject(new Error("no room"));
    await expect(takeIn(other, await written("json"))).rejects.toThrow("no room");
    expect(await other.everything()).toEqual([]);
  });
});

test("a log with keys of the prototype changes nobody's", async () => {
  const text = (await (await written("json")).text()).replace(
    '"kind":"fish"',
    '"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}},"kind":"fish"',
  );
  const other = newStore();
  expect(await takeIn(other, new Blob([text]))).toMatchObject({ log: { added: 3 } });
  expect(await other.everything()).toEqual(EVENTS);
  expect(({} as { polluted?: number }).polluted).toBeUndefined();
});

import { deflateSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { foldSession } from "../../src/log/fold.ts";
import { NOTHING_ALLOWED } from "../../src/share/allowed.ts";
import { codeIn, LONGEST_LINK, makeCode, readCode } from "../../src/share/link/link.ts";
import { unsqueeze } from "../../src/share/link/squeeze.ts";
import { qrCode } from "../../src/share/qr.ts";
import { allowedOf, summarise } from "../../src/share/summary.ts";
import { summaryText } from "../../src/share/summary-text.ts";
import { at, randomNumbers, sessionOf } from "../analysis/fixtures/session.ts";
import { day, START } from "./days.ts";
import { longDay } from "./long-day.ts";

const ALL = { water: true, peg: true, notes: true };
const STYLES = { weight: "lb-oz", length: "cm" } as const;
const address = (code: string) => `https://bank.example/some/folder/#${code}`;

describe("a link", () => {
  test("of 300 fish, each with its drop, bite and feed, is under 8 kB and whole", async () => {
    const session = longDay(300, randomNumbers(1));
    const now = at(600);
    const code = await makeCode(session, now, { allowed: ALL, form: "full" });
    expect(session.count).toBe(300);
    expect(session.entries.length).toBeGreaterThan(1100);
    expect(address(code).length).toBeLessThan(LONGEST_LINK);
    const shared = await readCode(code);
    expect(summaryText(shared.summary, STYLES, ALL)).toBe(
      summaryText(summarise(session, now), STYLES, ALL),
    );
    expect(shared.session?.entries).toHaveLength(session.entries.length);
  });

  test("can be made long after the day", async () => {
    for (const open of [longDay(20, randomNumbers(1)), sessionOf([[1, { kind: "drop" }]])]) {
      const code = await makeCode(open, at(60 * 24 * 1000), { allowed: ALL, form: "full" });
      expect((await readCode(code)).summary.drops).toBe(summarise(open, at(60)).drops);
    }
  });

  test("of more goes on growing, for a file", async () => {
    const code = await makeCode(longDay(1000, randomNumbers(1)), at(1500), {
      allowed: ALL,
      form: "full",
    });
    expect(code.length).toBeGreaterThan(LONGEST_LINK);
    expect((await readCode(code)).summary.count).toBe(1000);
  });

  test("without each fish fits a QR code, with the same sums", async () => {
    const session = longDay(300, randomNumbers(1));
    const code = await makeCode(session, at(600), { allowed: NOTHING_ALLOWED, form: "brief" });
    expect(qrCode(address(code))).toBeDefined();
    const shared = await readCode(code);
    expect(shared.session).toBeUndefined();
    expect(summaryText(shared.summary, STYLES)).toBe(
      summaryText(summarise(session, at(600)), STYLES),
    );
  });

  test("holds the place and the notes only where they are allowed, and never what was heard", async () => {
    const session = sessionOf([[1, { kind: "note", text: "by the reeds" }]], {
      plan: { water: "Osier Lake", peg: "red post", notes: "try paste" },
    });
    const heard = session.entries.map((entry) => ({
      ...entry,
      heard: { text: "note by the reeds aloud", by: "web" as const },
    }));
    for (const form of ["full", "brief"] as const) {
      const told = async (allowed: typeof ALL) =>
        JSON.stringify(
          await readCode(await makeCode({ ...session, entries: heard }, at(9), { allowed, form })),
        );
      expect(await told(NOTHING_ALLOWED)).not.toMatch(/Osier|post|reeds|paste|aloud/);
      expect(await told({ ...NOTHING_ALLOWED, water: true })).toContain("Osier Lake");
      expect(await told({ ...NOTHING_ALLOWED, peg: true })).toContain("red post");
      expect(await told({ ...NOTHING_ALLOWED, notes: true })).toMatch(/reeds.*|paste/);
      expect(await told(ALL)).not.toContain("aloud");
    }
  });

  test("gives the same session back, whatever was said", async () => {
    await fc.assert(
      fc.asyncProperty(day, async (events) => {
        const session = foldSession("s", events);
        const now = (session.entries.at(-1)?.at ?? START) + 60_000;
        const { summary, session: back } = await readCode(
          await makeCode(session, now, { allowed: ALL, form: "full" }),
        );
        const passed = session.entries.filter(({ statement }) => statement.kind !== "remind");
        expect(back?.entries.map(({ statement }) => statement.kind)).toEqual(
          passed.map(({ statement }) => statement.kind),
        );
        expect(back?.state).toBe(session.state);
        const { count, unweighed, species, losses, notes } = summarise(session, now);
        const toCheck = passed.filter(({ verdict }) => verdict === "check").length;
        expect(summary).toMatchObject({ count, unweighed, losses, toCheck });
        expect(summary.species.map((one) => one.count)).toEqual(species.map((one) => one.count));
        expect(summary.notes.map((one) => one.text)).toEqual(notes.map((one) => one.text));
      }),
      { numRuns: 200 },
    );
  });

  test("without each fish gives the same sums back, whatever was said", async () => {
    await fc.assert(
      fc.asyncProperty(day, async (events) => {
        const session = foldSession("s", events);
        const now = (session.entries.at(-1)?.at ?? START) + 60_000;
        const { summary } = await readCode(
          await makeCode(session, now, { allowed: NOTHING_ALLOWED, form: "brief" }),
        );
        const { count, losses, signs, drops, place } = allowedOf(
          summarise(session, now),
          NOTHING_ALLOWED,
        );
        expect(summary).toMatchObject({ count, losses, signs, drops, place });
      }),
      { numRuns: 100 },
    );
  });
});

describe("a link that is no good", () => {
  const refusal = async (code: string) =>
    readCode(code).then(
      () => "taken",
      (cause) => `${cause.name}: ${cause.message}`,
    );
  const code = () =>
    makeCode(longDay(20, randomNumbers(2)), at(60), { allowed: ALL, form: "full" });

  test("with any one letter changed or the end cut off says so", async () => {
    const whole = await code();
    for (let place = 3; place < whole.length; place += 7) {
      const other = whole[place] === "A" ? "B" : "A";
      const changed = whole.slice(0, place) + other + whole.slice(place + 1);
      const says = await refusal(changed);
      // The last letter's spare bits say nothing.
      if (place < whole.length - 1) expect(says).toMatch(/^Refusal: The link is not whole/);
      expect(await refusal(whole.slice(0, place))).toMatch(/^Refusal: The link is not whole/);
    }
  });

  test("of a newer version says that", async () => {
    expect(await refusal("v2.abc")).toMatch(/newer Pegscribe/);
  });

  test("that would unpack to more than any session is given up, and not unpacked", async () => {
    const bomb = deflateSync(Buffer.alloc(200_000_000));
    expect(bomb.length).toBeLessThan(300_000);
    expect(await refusal(`v1.${bomb.toString("base64url")}`)).toMatch(/^Refusal: The link is not/);
    const before = process.memoryUsage().arrayBuffers;
    expect(await unsqueeze(new Uint8Array(bomb), 2_000_000)).toBeUndefined();
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(20_000_000);
  });

  test("is unpacked in slices, none of which can grow to much before that is seen", async () => {
    const written: number[] = [];
    const Whole = DecompressionStream;
    vi.stubGlobal(
      "DecompressionStream",
      class {
        readonly writable: WritableStream;
        readonly readable: ReadableStream;
        constructor(form: CompressionFormat) {
          const counted = new TransformStream<Uint8Array<ArrayBuffer>>({
            transform(slice, onwards) {
              written.push(slice.length);
              onwards.enqueue(slice);
            },
          });
          this.writable = counted.writable;
          this.readable = counted.readable.pipeThrough(new Whole(form));
        }
      },
    );
    const bomb = deflateSync(Buffer.alloc(50_000_000));
    expect(await unsqueeze(new Uint8Array(bomb), 2_000_000)).toBeUndefined();
    vi.unstubAllGlobals();
    expect(Math.max(...written)).toBeLessThanOrEqual(1024);
  });

  test("that is far too long is not even looked at", async () => {
    expect(await refusal(`v1.${"A".repeat(500_000)}`)).toMatch(/far too long/);
  });

  test.each([
    ["nothing", ""],
    ["no JSON", "fish"],
    ["null", "null"],
    ["another form", '{"form":"strange"}'],
    ["a span of years", full({ waits: [0, 9e7], kinds: "dd" })],
    ["days after days", full({ waits: [0, 2e7, 2e7], kinds: "ddd", now: 3e7 })],
    ["less than its entries take", full({ waits: [0, 500], kinds: "dd" })],
    ["a day beyond all", full({ from: 9e12, waits: [0], kinds: "d" })],
    ["sums of a day beyond all", brief({ startedAt: 9e15 })],
    ["sums of fewer than no fish", brief({ count: -1 })],
    ["sums of a weight beyond all", brief({ spokenG: 1e300 })],
    ["sums of thousands of nets", brief({ nets: Array(2000).fill({ number: 1, ...NO_FISH }) })],
    ["more than any day has", full({ waits: Array(6000).fill(0), kinds: "d".repeat(6000) })],
    ["too few times", full({ waits: [0], kinds: "dd" })],
    ["a letter of nobody's", full({ waits: [0], kinds: "q" })],
    ["a weight of nobody's fish", full({ waits: [0], kinds: "f", columns: { f: [0, 0, [-5]] } })],
    ["a word that is not there", full({ waits: [0], kinds: "l", columns: { l: [[9]] } })],
    ["numbers beyond all", full({ waits: [0], kinds: "f", columns: { f: [0, 0, [1e308]] } })],
  ])("that holds %s says so", async (_, json) => {
    expect(await refusal(`v1.${deflateSync(json).toString("base64url")}`)).toMatch(
      /^Refusal: The link is not whole/,
    );
  });

  test("gives nobody's prototype new fields", async () => {
    const json = full({ waits: [0], kinds: "d" }).replace(
      '"plan":{}',
      '"__proto__":{"polluted":true},"plan":{"__proto__":{"polluted":true}}',
    );
    await readCode(`v1.${deflateSync(json).toString("base64url")}`);
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });
});

function full(more: object): string {
  return JSON.stringify({
    ...{ form: "full", from: 1_780_000_000, now: 100, kinds: "", waits: [], words: [] },
    ...{ columns: {}, plan: {}, scales: [] },
    ...more,
  });
}

const NO_FISH = { count: 0, spokenG: 0, unweighed: 0 };

function brief(more: object): string {
  const none = { species: [], losses: [], signs: [], setUps: [], nets: [], notes: [] };
  const summary = { ...NO_FISH, ...none, place: {}, fishedMs: 0, drops: 0, toCheck: 0, ...more };
  return JSON.stringify({ form: "brief", summary });
}

test("what the refused ones are made from is no such thing itself", async () => {
  for (const json of [full({ waits: [0, 50], kinds: "dd" }), brief({})]) {
    const code = `v1.${deflateSync(json).toString("base64url")}`;
    expect((await readCode(code)).summary.count).toBe(0);
  }
});

test("a code is found in an address, or alone in a file", () => {
  expect(codeIn(address("v1.abc"))).toBe("v1.abc");
  expect(codeIn("v1.abc\n")).toBe("v1.abc");
  expect(codeIn("#live")).toBeUndefined();
});

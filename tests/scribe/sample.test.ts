import { describe, expect, test } from "vitest";
import { createReader } from "../../grammar/read.ts";
import { SteadyClock } from "../../src/log/clock.ts";
import { MemoryStore } from "../../src/log/memory-store.ts";
import { Desks } from "../../src/scribe/desks.ts";
import { PacedClock } from "../../src/scribe/paced-clock.ts";
import { playSample } from "../../src/scribe/sample-player.ts";
import { SAMPLE_LINES, sampleOffset } from "../../src/scribe/sample-session.ts";
import { Scribe, type Spoken } from "../../src/scribe/scribe.ts";
import { DEFAULT_SETTINGS } from "../../src/scribe/settings.ts";
import { READINGS } from "./sample-readings.ts";

describe("the sample's lines", () => {
  const reader = createReader();
  const read = SAMPLE_LINES.map(([, phrase]) => {
    const { verdict, statements } = reader.read([phrase]);
    return [phrase, [verdict, ...statements]] as const;
  });

  test("are each read as meant", () => {
    expect(Object.fromEntries(read)).toEqual(READINGS);
  });

  test("go forward through about four hours", () => {
    const times = SAMPLE_LINES.map(([time]) => sampleOffset(time));
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(new Set(times).size).toBe(times.length);
    expect(times.at(-1)).toBeGreaterThan(3.9 * 3_600_000);
    expect(times.at(-1)).toBeLessThan(4.1 * 3_600_000);
  });
});

/** Desks as the page has them, with a scribe at whichever is open. */
function house() {
  const clock = new SteadyClock();
  const kept = new Map<string, string>();
  const small = {
    get: (name: string) => kept.get(name),
    set: (name: string, value: string) => void kept.set(name, value),
  };
  const store = new MemoryStore(clock);
  const desks = new Desks(store, clock, small);
  const reminded: string[] = [];
  const scribes = new Map<unknown, Scribe>();
  const hear = (spoken: Spoken) => {
    const { notebook, now } = desks.current.value;
    const scribe =
      scribes.get(notebook.value) ??
      new Scribe({
        notebook: notebook.value,
        trouble: () => undefined,
        settings: () => DEFAULT_SETTINGS,
        now,
        setLevel: () => {},
        tell: () => {},
        warn: () => {},
        remind: (words) => reminded.push(words),
      });
    scribes.set(notebook.value, scribe);
    return scribe.hear(spoken);
  };
  return { desks, store, hear, reminded };
}

describe("the sample day, played", () => {
  test("becomes a session as any other, at its own times, and leaves the angler's log alone", async () => {
    const { desks, store, hear, reminded } = house();
    await hear({ alternatives: ["fish two pounds"], by: "typed" });
    await desks.playSample(1_000_000, hear);
    const session = desks.current.value.session.value;
    const { startedAt = 0, endedAt = 0 } = session;
    expect(endedAt - startedAt).toBe(sampleOffset("4:00:10") - sampleOffset("0:00:05"));
    expect(session.state).toBe("ended");
    expect(session.plan).toMatchObject({ water: "Osier Lake, Quillet Pools", peg: "17" });
    expect(session.pauses).toHaveLength(1);
    expect(session.nets.length).toBe(2);
    expect(session.entries.filter(({ verdict }) => verdict === "check")).toHaveLength(1);
    expect(session.heardLines.length).toBeGreaterThan(4);
    expect(reminded.filter((words) => /net 1/i.test(words))).toHaveLength(1);
    expect(reminded.at(-1)).toBe("Ten minutes left.");
    expect(desks.sample.value).toEqual({ done: SAMPLE_LINES.length, of: SAMPLE_LINES.length });
    expect(await store.everything()).toHaveLength(1);
    desks.stopSample();
    expect(desks.sample.value).toBeUndefined();
    expect(desks.current.value.session.value.count).toBe(1);
  });

  test("stops where it is told to, and hears no more", async () => {
    const { desks, hear } = house();
    const playing = desks.playSample(1, hear);
    await new Promise((done) => setTimeout(done, 50));
    const sampled = desks.current.value;
    expect(sampled).not.toBe(desks.own);
    desks.stopSample();
    await playing;
    expect(sampled.session.value.entries).toEqual([]);
    expect(desks.current.value).toBe(desks.own);
  });

  test("keeps its pace", async () => {
    const clocked: number[] = [];
    const start = performance.now();
    const real = () => performance.now() - start;
    const clock = new PacedClock(0, real);
    const at: number[] = [];
    const stop = new AbortController();
    const playing = playSample(
      {
        clock,
        speed: 60,
        notebook: house().desks.own.notebook.value,
        hear: async ({ startedAt = 0 }) => {
          at.push(startedAt);
          clocked.push(clock.now());
          if (at.length === 3) stop.abort();
        },
        onProgress: () => {},
      },
      stop.signal,
    );
    await playing;
    expect(at).toEqual(["0:00:05", "0:00:30", "0:00:50"].map(sampleOffset));
    expect(clocked).toEqual(at);
    expect(real()).toBeGreaterThanOrEqual(sampleOffset("0:00:50") / 60);
  });
});

test("a paced clock stands, runs at its speed up to its limit, and stops there", () => {
  let real = 100;
  const clock = new PacedClock(5000, () => real);
  real += 50;
  expect(clock.now()).toBe(5000);
  expect(clock.run(10, 6000)).toBe(100);
  real += 50;
  expect(clock.now()).toBe(5500);
  real += 500;
  expect(clock.now()).toBe(6000);
  clock.run(10, 7000);
  clock.arrive();
  real += 50;
  expect(clock.now()).toBe(7000);
  clock.run(1);
  real += 50;
  expect(clock.now()).toBe(7050);
});

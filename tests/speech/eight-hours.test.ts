/** A day on the bank: eight hours of talk, silences and every known fault, in faked time. */

import { describe, expect, it } from "vitest";
import { LONGEST_WAIT_MS } from "../../src/speech/back-off.ts";
import { BETWEEN_STARTS_MS, ECHO_MS, Listener } from "../../src/speech/listener.ts";
import { WebRecogniser } from "../../src/speech/web-recogniser.ts";
import { END_LIMIT_MS, QUIET_LIMIT_MS } from "../../src/speech/web-run.ts";
import { CountedClock, FakeClock } from "./fake-clock.ts";
import { FakePage } from "./fake-recogniser.ts";
import { FAULTS, OPENING_MS, SimulatedBrowser } from "./simulated-browser.ts";

const EIGHT_HOURS_MS = 8 * 3_600_000;
const WORD_MS = 350;
const SPEAKING_MS = 1_500;
/** One fault: a run that has gone deaf unnoticed, its end not reported, then the longest wait. */
const LONGEST_GAP_MS =
  QUIET_LIMIT_MS +
  END_LIMIT_MS +
  LONGEST_WAIT_MS +
  BETWEEN_STARTS_MS +
  SPEAKING_MS +
  ECHO_MS +
  2 * OPENING_MS;
/** Without any fault, a run that ends is followed by the next as soon as starts may follow. */
const LONGEST_FAULTLESS_GAP_MS = BETWEEN_STARTS_MS + SPEAKING_MS + ECHO_MS + 2 * OPENING_MS + 200;

/** Mulberry32, a small generator of numbers from 0 to 1 that repeats for the same seed. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

function spendTheDay(setting: { seed: number; android: boolean; faultChance: number }) {
  const clock = new FakeClock();
  const counted = new CountedClock(clock);
  const random = seeded(setting.seed);
  const browser = new SimulatedBrowser({ clock, random, ...setting });
  const delivered: string[] = [];
  let mostTimers = 0;
  const recogniser = new WebRecogniser(browser, { continuous: !setting.android, clock: counted });
  const listener = new Listener({
    recognisers: [recogniser],
    clock: counted,
    page: new FakePage(),
    events: {
      onState: () => {
        mostTimers = Math.max(mostTimers, counted.pending);
      },
      onInterim: () => {},
      onTrouble: () => {},
      onUtterance: ({ alternatives }) => {
        delivered.push(...(alternatives[0]?.text ?? "").split(" "));
        if (random() < 0.5) speakBack();
      },
    },
  });

  function speakBack() {
    listener.hold();
    clock.setTimeout(() => listener.release(), SPEAKING_MS);
  }

  function speak(utterance: number) {
    const length = 1 + Math.floor(random() * 6);
    for (let place = 0; place < length; place++) {
      const say = () => browser.hear(`u${utterance}w${place}`, place === length - 1);
      clock.setTimeout(say, place * WORD_MS);
    }
    const pause = random() < 0.05 ? 600_000 * random() : 3_000 + 40_000 * random();
    clock.setTimeout(() => speak(utterance + 1), length * WORD_MS + pause);
  }

  listener.start();
  clock.setTimeout(() => speak(0), 2_000);
  clock.advance(EIGHT_HOURS_MS);
  const stateAtEnd = listener.state;
  listener.stop();
  clock.advance(60_000);
  return { browser, delivered, listener, counted, mostTimers, stateAtEnd };
}

function longestGap({ hearing }: SimulatedBrowser): number {
  const gaps = hearing.slice(1).map(({ from }, index) => from - (hearing[index]?.to ?? from));
  return Math.max(...gaps);
}

const DAYS = [1, 2, 3].flatMap((seed) => [
  { seed, android: false, faultChance: 0.25 },
  { seed, android: true, faultChance: 0.25 },
]);

describe.each(DAYS)("eight hours, seed $seed, Android $android", (setting) => {
  const day = spendTheDay(setting);
  const { browser, delivered } = day;

  it("meets every fault, and talk enough", () => {
    expect([...browser.faults.keys()].sort()).toEqual([...FAULTS].sort());
    expect(browser.reported.size).toBeGreaterThan(1_000);
  });

  it("delivers every word reported exactly once", () => {
    expect(new Set(delivered).size).toBe(delivered.length);
    expect([...browser.reported].filter((word) => !delivered.includes(word))).toEqual([]);
  });

  it("is never deaf for longer than stated", () => {
    expect(longestGap(browser)).toBeLessThanOrEqual(LONGEST_GAP_MS);
    expect(browser.hearing.length).toBeGreaterThan(500);
  });

  it("starts at least a second apart", () => {
    const { starts } = browser;
    const apart = starts.slice(1).map((start, index) => start - (starts[index] ?? 0));
    expect(Math.min(...apart)).toBeGreaterThanOrEqual(BETWEEN_STARTS_MS);
  });

  it("is still at work at the end, and leaves no timer behind", () => {
    expect(["starting", "listening", "held", "waiting"]).toContain(day.stateAtEnd.is);
    expect(day.mostTimers).toBeLessThanOrEqual(4);
    expect(day.listener.state).toEqual({ is: "off" });
    expect(day.counted.pending).toBe(0);
  });
});

it("without faults has only the gaps that restarting and speaking take", () => {
  const { browser } = spendTheDay({ seed: 4, android: false, faultChance: 0 });
  expect(browser.faults.size).toBe(0);
  expect(longestGap(browser)).toBeLessThanOrEqual(LONGEST_FAULTLESS_GAP_MS);
});

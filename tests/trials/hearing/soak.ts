/**
 * Hours on the bank in simulated time: talk, silences, everything browsers do and phones suffer. The
 * chain is the app's own, from the browser's recognition to the log; only the sound, the clock, the
 * page and the voice are played.
 */
import { SteadyClock } from "../../../src/log/clock.ts";
import type { LogEvent } from "../../../src/log/event.ts";
import { Keeper } from "../../../src/log/keeper.ts";
import { MemoryStore } from "../../../src/log/memory-store.ts";
import { Deafness } from "../../../src/scribe/deafness.ts";
import { Notebook } from "../../../src/scribe/notebook.ts";
import { Scribe } from "../../../src/scribe/scribe.ts";
import { DEFAULT_SETTINGS } from "../../../src/scribe/settings.ts";
import { Listener } from "../../../src/speech/listener.ts";
import type { ListenerState } from "../../../src/speech/listener-state.ts";
import type { TroubleReason, Utterance } from "../../../src/speech/recogniser.ts";
import { Talkback } from "../../../src/speech/talkback.ts";
import { Voice } from "../../../src/speech/voice.ts";
import { WebRecogniser } from "../../../src/speech/web-recogniser.ts";
import { randomNumbers } from "../../analysis/fixtures/session.ts";
import { CountedClock, FakeClock } from "../../speech/fake-clock.ts";
import { FakePage } from "../../speech/fake-recogniser.ts";
import { heldBytes } from "../held-bytes.ts";
import { Air } from "./air.ts";
import { DeafSpell } from "./deaf-spell.ts";
import { HOUR_MS, MISHAPS, type Phone } from "./mishaps.ts";
import { playedSynthesis } from "./played-voice.ts";
import { talk } from "./talk.ts";

export interface SoakSetting {
  seed: number;
  android: boolean;
  hours: number;
}

export interface SoakReport {
  /** Utterances said, and words that reached the page from whatever heard. */
  said: number;
  reported: ReadonlySet<string>;
  /** The longest that words went unheard with nothing in their way; milliseconds. */
  deafMs: number;
  /** The log as it was stored, and how often it was answered aloud. */
  events: readonly LogEvent[];
  spoken: number;
  mishaps: ReadonlyMap<string, number>;
  /** How many starts of the browser's recognition went wrong by themselves. */
  faults: number;
  /** What the angler was told of his ears. */
  told: readonly TroubleReason[];
  stateAtEnd: ListenerState;
  /** Timers left once listening was stopped. */
  timersLeft: number;
  /** Held at the end of each hour. */
  bytes: readonly number[];
}

const TONE_MS = 300;
/** Promises come true between steps: an answer is later by no more than this. */
const STEP_MS = 250;
const FAULT_CHANCE = 0.15;
const MISHAP_EVERY_MS = 6 * 60_000;

export async function soak({ seed, android, hours }: SoakSetting): Promise<SoakReport> {
  const clock = new FakeClock();
  const counted = new CountedClock(clock);
  const random = randomNumbers(seed);
  const page = new FakePage();
  const air = new Air(clock, { random, android, faultChance: FAULT_CHANCE });
  const wall = new SteadyClock(clock.now, clock.elapsed);
  const store = new MemoryStore(wall);
  const keeper = new Keeper(store, wall);
  const notebook = new Notebook("soak", store, keeper);
  const told: TroubleReason[] = [];
  const synthesis = playedSynthesis(clock, random);
  const talkback: Talkback = new Talkback({
    tones: { unlock: () => {}, play: () => TONE_MS },
    voice: new Voice(synthesis, counted),
    level: "short",
    hold: () => listener.hold(),
    release: () => listener.release(),
    clock: counted,
  });
  const scribe = new Scribe({
    notebook,
    trouble: () => keeper.keeping.trouble?.message,
    settings: () => DEFAULT_SETTINGS,
    setLevel: () => {},
    now: clock.now,
    tell: (answer) => talkback.answer(answer),
    warn: (answer) => talkback.answer(answer),
    remind: () => {},
  });
  const deafness = new Deafness(clock, (reason) => told.push(reason));
  const hear = ({ alternatives, startedAt, by }: Utterance) =>
    void scribe.hear({ alternatives: alternatives.map(({ text }) => text), by, startedAt });
  const listener = new Listener({
    recognisers: [
      new WebRecogniser({ Recognition: air.Recognition }, { continuous: !android, clock: counted }),
      air.inside,
    ],
    rank: () => (page.online ? ["web", "offline"] : ["offline", "web"]),
    clock: counted,
    page,
    events: {
      onState: (state) => deafness.follow(state),
      onInterim: () => {},
      onTrouble: () => {},
      onUtterance: (utterance) => {
        deafness.forget();
        hear(utterance);
      },
    },
  });
  const phone: Phone = { clock, page, air, random, tap: () => listener.start() };
  const mishaps = suffer(phone);
  const deaf = new DeafSpell();
  const account = talk(clock, random, (word, isLast) => {
    air.hear(word, isLast);
    if (isLast) deaf.said(clock.elapsed(), air.reported, page.hidden || air.block !== undefined);
  });

  listener.start();
  const bytes: number[] = [];
  for (let hour = 0; hour < hours; hour += 1) {
    await pass(clock, HOUR_MS, () => scribe.look());
    bytes.push(heldBytes());
  }
  const stateAtEnd = listener.state;
  listener.stop();
  await pass(clock, 60_000, () => {});
  keeper.close();
  return {
    said: account.said,
    reported: new Set([...air.browser.reported, ...air.inside.reported]),
    deafMs: deaf.longestMs,
    events: await store.everything(),
    spoken: synthesis.spoken(),
    faults: [...air.browser.faults.values()].reduce((sum, times) => sum + times, 0),
    ...{ mishaps, told, stateAtEnd, bytes },
    timersLeft: counted.pending,
  };
}

/** Lets simulated time go by, and everything promised in it come true. */
async function pass(clock: FakeClock, ms: number, eachSecond: () => void): Promise<void> {
  for (let gone = 0; gone < ms; gone += STEP_MS) {
    clock.advance(STEP_MS);
    if (gone % 1000 === 0) eachSecond();
    await new Promise((done) => setImmediate(done));
  }
}

/** From now on something happens every few minutes; each thing in turn, in an order of chance. */
function suffer(phone: Phone): ReadonlyMap<string, number> {
  const { clock, random } = phone;
  const names = Object.keys(MISHAPS);
  const met = new Map(names.map((name) => [name, 0]));
  let waiting: string[] = [];
  const next = () => {
    if (waiting.length === 0) waiting = names.toSorted(() => random() - 0.5);
    const name = waiting.pop() as string;
    met.set(name, (met.get(name) ?? 0) + 1);
    MISHAPS[name]?.(phone);
    clock.setTimeout(next, MISHAP_EVERY_MS * (0.5 + random()));
  };
  clock.setTimeout(next, MISHAP_EVERY_MS);
  return met;
}

/** An app for the screens with a real log in memory; what needs a browser is played by signals. */
import { computed, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import { SteadyClock } from "../../src/log/clock.ts";
import { Keeper } from "../../src/log/keeper.ts";
import { MemoryStore } from "../../src/log/memory-store.ts";
import type { Session } from "../../src/log/session.ts";
import type { EarsKept } from "../../src/screens/app/ears-care.ts";
import type { HomeScreenState, StorageState } from "../../src/screens/app/home.ts";
import type { App, Hearing, Keeping, LastHeard, Settings } from "../../src/screens/app.ts";
import { byHand } from "../../src/scribe/by-hand.ts";
import { Notebook } from "../../src/scribe/notebook.ts";
import { Scribe } from "../../src/scribe/scribe.ts";
import { clerkOf } from "../../src/scribe/season/clerk.ts";
import { Season } from "../../src/scribe/season/season.ts";
import { DEFAULT_SETTINGS } from "../../src/scribe/settings.ts";
import { makePassOn } from "../../src/share/pass-on.ts";
import type { EarsThere } from "../../src/speech/ranking.ts";
import { type FakeBoard, fakeBoard } from "./fake-board.ts";

/** Nine in the morning, where the test runs. */
export const NINE = new Date(2026, 5, 6, 9, 0, 0).getTime();
export const MINUTE_MS = 60_000;

/** Minutes after nine, and what was heard then: the recogniser's alternatives, best first. */
export type Line = readonly [minutes: number, ...alternatives: string[]];

export interface FakeApp extends App {
  /** This phone is on none at first. */
  board: FakeBoard;
  session: ReadonlySignal<Session>;
  /** What the screens asked of the parts that are only played, in order. */
  asked: string[];
  store: MemoryStore;
  /** Lets the test play the part of the ears, the store and the clock. */
  plays: {
    hearing: Signal<Hearing>;
    keeping: Signal<Keeping>;
    interim: Signal<string>;
    updateWaiting: Signal<boolean>;
    sample: Signal<{ done: number; of: number } | undefined>;
    now: Signal<number>;
    storage: Signal<StorageState>;
    homeScreen: Signal<HomeScreenState>;
    isNew: Signal<boolean>;
    earsKept: Signal<EarsKept>;
    webEars: Signal<EarsThere["web"]>;
  };
}

export async function fakeApp(lines: readonly Line[] = []): Promise<FakeApp> {
  const now = signal(NINE);
  const asked: string[] = [];
  const ask = (what: string) => () => void asked.push(what);
  const clock = new SteadyClock(
    () => now.value,
    () => now.value,
  );
  const store = new MemoryStore(clock);
  const keeper = new Keeper(store, clock);
  const notebook = new Notebook("session-a", store, keeper);
  await notebook.ready;
  const settings = signal<Settings>(DEFAULT_SETTINGS);
  const hearing = signal<Hearing>({ is: "off", sendsSound: true });
  const keeping = signal<Keeping>({ unsaved: 0, damaged: 0 });
  const [interim, nudge] = [signal(""), signal<string>()];
  const lastHeard = signal<LastHeard>();
  const inQuestion = signal<string>();
  const sample = signal<{ done: number; of: number }>();
  const [isAwake, updateWaiting] = [signal(true), signal(false)];
  const storage = signal<StorageState>("unknown");
  const [homeScreen, isNew] = [signal<HomeScreenState>("by-menu"), signal(false)];
  const earsKept = signal<EarsKept>({ is: "absent" });
  const webEars = signal<EarsThere["web"]>("sends");
  const scribe = new Scribe({
    notebook,
    trouble: () => undefined,
    settings: () => settings.value,
    now: () => now.value,
    setLevel: () => {},
    tell: () => {},
    warn: () => {},
    remind: (words) => {
      nudge.value = words;
    },
    inQuestion: () => inQuestion.value,
  });
  const { session } = notebook;
  for (const [minutes, ...alternatives] of lines) {
    now.value = NINE + minutes * MINUTE_MS;
    lastHeard.value = await scribe.hear({ alternatives, by: "web" });
  }

  const season = new Season({
    store,
    clerk: clerkOf(store),
    begin: async (notes) =>
      void asked.push(`begin with ${JSON.stringify(notes.map((one) => one.body))}`),
  });

  const board = fakeBoard();
  board.membership.value = undefined;

  return {
    board,
    ...{ session, hearing, interim, lastHeard, keeping, nudge, settings, now, isAwake, sample },
    ...{ updateWaiting, asked, store },
    sessions: signal([{ id: "session-a", firstAt: NINE, lastAt: NINE + 60 * MINUTE_MS }]),
    past: signal([]),
    season: async () => season,
    canUndo: computed(() => session.value.corrections.length > 0),
    canRedo: computed(() => session.value.undone.length > 0),
    ...byHand(() => notebook),
    putRight: { inQuestion, readOut: (words) => void asked.push(`say: ${words}`) },
    voice: {
      memos: signal(new Set()),
      playMemo: async () => {},
      drill: () => Promise.reject(new Error("no ears")),
    },
    earsCare: {
      ...{ state: earsKept, web: webEars },
      measure: async () => {},
      getReady: async () => void asked.push("get ready"),
      remove: async () => void asked.push("remove the ears"),
    },
    home: {
      storage,
      askToKeep: async () => void asked.push("ask to keep"),
      homeScreen,
      putOnHomeScreen: async () => void asked.push("put on the home screen"),
      isNew,
      practise: ask("practise"),
      stopPractising: ask("stop practising"),
      tryVoice: async (words) => asked.push(`say: ${words}`) > 0,
    },
    startListening: ask("start listening"),
    stopListening: ask("stop listening"),
    async type(phrase) {
      lastHeard.value = await scribe.type(phrase);
    },
    async takeBack() {
      lastHeard.value = await scribe.takeBack();
    },
    readings: (heard) => scribe.readings(heard),
    setSettings(part) {
      settings.value = { ...settings.value, ...part };
    },
    newSession: ask("new session"),
    openSession: async (id) => void asked.push(`open ${id}`),
    playSample: async (speed) => void asked.push(`play the sample at ${speed}`),
    stopSample: ask("stop the sample"),
    passOn: makePassOn({
      own: { store, keeper },
      open: () => ({ store, keeper, session }),
      now: () => now.value,
      settings: () => settings.value,
      takeSettings: (kept) => void asked.push(`settings ${JSON.stringify(kept)}`),
    }),
    takeUpdate: ask("take the update"),
    plays: {
      ...{ storage, homeScreen, isNew, hearing, keeping, interim, updateWaiting, sample, now },
      ...{ earsKept, webEars },
    },
  };
}

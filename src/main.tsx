/** Makes what lives, wires it together, and shows it. */
import { computed, effect, signal } from "@preact/signals";
import { render } from "preact";
import { SteadyClock } from "./log/clock.ts";
import { IdbStore } from "./log/idb-store.ts";
import { lasts } from "./log/lasts.ts";
import { LaterCopy } from "./log/later-copy.ts";
import { LOG_NAME } from "./log/log-name.ts";
import type { App } from "./screens/app.ts";
import { Shell } from "./screens/shell.tsx";
import { isUntouched } from "./screens/untouched.ts";
import type { Attendant } from "./scribe/attendant.ts";
import { laterBoard } from "./scribe/board/later-board.ts";
import { byHand } from "./scribe/by-hand.ts";
import { Desks } from "./scribe/desks.ts";
import { makeEarsCare } from "./scribe/ears-here.ts";
import { makeHome } from "./scribe/home.ts";
import { askBeforeLeaving } from "./scribe/leaving.ts";
import type { Hearing, LastHeard } from "./scribe/news.ts";
import { laterSeason } from "./scribe/season/later-season.ts";
import { readSettings, settingsOfAnother } from "./scribe/settings.ts";
import { browserSmallStore as small } from "./scribe/small-store.ts";
import type { Updates } from "./scribe/updates.ts";
import { makePassOn } from "./share/pass-on.ts";
import { ScreenWakeLock } from "./speech/wake-lock.ts";
import { findWebSpeech } from "./speech/web-speech-types.ts";
import { appWords } from "./words/app.ts";

const TICK_MS = 1000;

/** @returns with it, what is to be called once it is rendered */
function makeApp(): { app: App; goOn(): void } {
  const clock = new SteadyClock();
  const copy = new LaterCopy();
  const desks = new Desks(new IdbStore(LOG_NAME, clock, copy), clock, small);
  const desk = desks.current;
  const session = computed(() => desk.value.session.value);
  const isRunning = computed(() => lasts(session.value));
  const now = signal(desk.value.now());
  const settings = signal(readSettings(small.get("settings")));
  // Until the ears are here and know better.
  const sendsSound = settings.value.ears !== "offline" && findWebSpeech() !== undefined;
  const hearing = signal<Hearing>({ is: "off", sendsSound });
  const [interim, isAwake] = [signal(""), signal(false)];
  const lastHeard = signal<LastHeard>();
  const nudge = signal<string>();
  const inQuestion = signal<string>();
  const { season, canPutBack } = laterSeason(desks);
  const updates = signal<Updates>();

  const attendant = signal<Attendant>();
  const makeAttendant = async () => {
    // Each in a task of its own: with all of it in one, a touch would have to wait.
    await import("../grammar/language.ts");
    const { Attendant } = await import("./scribe/attendant.ts");
    await ownTask();
    attendant.value = new Attendant({
      ...{ desks, season, settings, earsCare, hearing, interim, lastHeard, nudge, inQuestion },
    });
    return attendant.value;
  };
  let attending: Promise<Attendant> | undefined;
  /** The attendant, once it is fetched; where that failed, it is tried again when next needed. */
  const attend = () => {
    attending ??= makeAttendant().catch((cause) => {
      attending = undefined;
      hearing.value = { is: "unavailable", sendsSound: false, trouble: appWords.notWhole };
      throw cause;
    });
    return attending;
  };

  const home = makeHome({ small, desks, attend });
  const earsCare = makeEarsCare(() => home.askToKeep());
  // What was heard at one desk says nothing of another.
  effect(() => {
    desk.value;
    lastHeard.value = nudge.value = undefined;
  });
  effect(() => {
    if (desk.value === desks.own && isRunning.value) void home.askToKeep();
  });

  const wakeLock = new ScreenWakeLock({
    wakeLock: navigator.wakeLock,
    onState: (state) => {
      isAwake.value = state === "held";
    },
  });
  effect(() => (isRunning.value ? wakeLock.keep() : wakeLock.letGo()));
  askBeforeLeaving(desks.own.keeping, window);
  effect(() => small.set("settings", JSON.stringify(settings.value)));
  setInterval(() => {
    now.value = desk.value.now();
    attendant.value?.look();
    void desk.value.refresh();
    updates.value?.look();
  }, TICK_MS);
  const watchVersion = async () => {
    const { makeUpdates } = await import("./scribe/updates.ts");
    updates.value = makeUpdates({ desks, hearing, canPutBack, isUntouched });
    if (import.meta.env.PROD) await updates.value.watch();
  };
  const board = laterBoard(desks);
  const goOn = () => {
    afterPaint().then(() => desk.value.refresh());
    afterPaint().then(attend).then(watchVersion, hearingSaysWhy);
    afterPaint()
      .then(attend)
      .then(() => copy.complete(desks.own.store), hearingSaysWhy);
    afterPaint()
      .then(board.goOn)
      .catch(() => {});
  };

  const passOn = makePassOn({
    own: desks.own,
    open: () => desk.value,
    now: Date.now,
    settings: () => settings.value,
    takeSettings: (kept) => {
      settings.value = settingsOfAnother(kept, settings.value);
    },
  });

  const app: App = {
    session,
    sessions: computed(() => desks.own.sessions.value),
    hearing,
    interim,
    lastHeard,
    keeping: computed(() => desk.value.keeping.value),
    nudge,
    settings,
    now,
    isAwake,
    sample: desks.sample,
    past: computed(() => attendant.value?.past.value ?? []),
    updateWaiting: computed(() => updates.value?.isOffered.value ?? false),
    canUndo: computed(() => session.value.corrections.length > 0),
    canRedo: computed(() => session.value.undone.length > 0),
    ...byHand(() => desk.value.notebook.value),
    putRight: { inQuestion, readOut: (words) => attendant.value?.readOut(words) },

    async startListening() {
      void home.askToKeep();
      await (await attend()).ears.start();
    },
    stopListening: () => attendant.value?.ears.stop(),
    type: async (text) => (await attend()).type(text),
    takeBack: async () => (await attend()).takeBack(),
    readings: (heard) => attendant.value?.readings(heard) ?? [],
    setSettings(part) {
      settings.value = { ...settings.value, ...part };
    },
    newSession: () => desks.newSession(),
    async openSession(id) {
      desks.openSession(id);
      await desks.own.notebook.value.ready;
    },
    async playSample(speed) {
      const made = await attend();
      await desks.playSample(speed, (spoken) => made.hear(spoken));
    },
    stopSample: () => desks.stopSample(),
    season,
    passOn,
    board,
    home,
    earsCare,
    voice: {
      memos: computed(() => attendant.value?.memos.ids.value ?? new Set()),
      playMemo: async (id) => attendant.value?.playMemo(id),
      drill: async () => (await attend()).drill(),
    },
    takeUpdate: () => updates.value?.take(),
  };
  return { app, goOn };
}

const hearingSaysWhy = () => {};

/** Once what was rendered is there to be looked at. */
const afterPaint = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));

/** What comes next begins a task of its own: a touch may come in before it. */
const ownTask = () => new Promise((goOn) => setTimeout(goOn));

async function start(root: HTMLElement): Promise<void> {
  await ownTask();
  const { app, goOn } = makeApp();
  await ownTask();
  render(<Shell app={app} />, root);
  goOn();
}

const root = document.getElementById("app");
if (root) void start(root);

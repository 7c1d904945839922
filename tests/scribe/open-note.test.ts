/** With which session the app goes on, after the note of it was lost or came to the disk too late. */
import { beforeEach, describe, expect, test, vi } from "vitest";
import type { LogEvent } from "../../src/log/event.ts";
import { newId } from "../../src/log/identity.ts";
import { PATIENCE_MS } from "../../src/log/patience.ts";
import type { Desks } from "../../src/scribe/desks.ts";
import { note } from "../../src/scribe/notebook.ts";
import { Scribe } from "../../src/scribe/scribe.ts";
import { DEFAULT_SETTINGS } from "../../src/scribe/settings.ts";
import { idle, KilledPhone } from "./killed-phone.ts";

const HOUR_MS = 3_600_000;
const fish = () => note({ kind: "entry", statement: { kind: "fish" } }, "log");
const open = (desks: Desks) => desks.own.notebook.peek().id;
const say = (desks: Desks) => desks.own.notebook.peek().write([fish()]);

let phone: KilledPhone;
beforeEach(() => {
  phone = new KilledPhone();
});

describe("after a kill, the session of the last entry is open", () => {
  test("though nothing was noted since the very first opening", async () => {
    const first = await phone.started();
    await say(first);
    const again = await phone.restarted();
    expect(open(again)).toBe(open(first));
    expect(again.own.session.value.count).toBe(1);
  });

  test("though the new session was not noted yet", async () => {
    const before = await phone.started();
    await say(before);
    phone.save();
    before.newSession();
    await say(before);
    const again = await phone.restarted();
    expect(open(again)).toBe(open(before));
    expect(again.own.session.value.count).toBe(1);
  });

  test("also at the third start, with the note of the second on the disk", async () => {
    const first = await phone.started();
    await say(first);
    await phone.restarted();
    phone.save();
    expect(open(await phone.restarted())).toBe(open(first));
  });

  test("and was only held back at first, as the disk was full", async () => {
    const desks = await phone.started();
    await say(desks);
    phone.save();
    desks.newSession();
    phone.store.failing = "quota";
    expect((await say(desks)).isStored).toBe(false);
    phone.store.failing = undefined;
    expect(await desks.own.keeper.retry()).toBe(true);
    desks.own.keeper.close();
    const again = await phone.restarted();
    expect(open(again)).toBe(open(desks));
    expect(again.own.session.value.count).toBe(1);
  });

  test("whatever the phone's clock was set to in between", async () => {
    const desks = await phone.started();
    await say(desks);
    phone.save();
    phone.wall -= HOUR_MS;
    desks.newSession();
    await say(desks);
    phone.wall -= HOUR_MS;
    const again = await phone.restarted();
    expect(open(again)).toBe(open(desks));
  });
});

describe("a session that was opened stays open", () => {
  test("though nothing is written in it, and more was written elsewhere before", async () => {
    const desks = await phone.started();
    await say(desks);
    const old = open(desks);
    desks.newSession();
    await say(desks);
    desks.openSession(old);
    await idle();
    phone.save();
    expect(open(await phone.restarted())).toBe(old);
  });

  test("also when the clock was set back before it was opened", async () => {
    const desks = await phone.started();
    await say(desks);
    phone.wall -= HOUR_MS;
    desks.newSession();
    await idle();
    phone.save();
    expect(open(await phone.restarted())).toBe(open(desks));
  });

  test("through what comes from another phone", async () => {
    const desks = await phone.started();
    await say(desks);
    phone.save();
    const [own] = (await phone.store.everything()) as [LogEvent];
    const theirs = {
      ...own,
      id: newId(),
      session: "theirs",
      device: "other",
      at: own.at + HOUR_MS,
    };
    await phone.store.put([theirs]);
    expect(open(await phone.restarted())).toBe(open(desks));
  });

  test("where an earlier version has noted it, and kept nothing of what it wrote last", async () => {
    phone.notes.set("session", "june");
    expect(open(await phone.started())).toBe("june");
    phone.save();
    expect(open(await phone.restarted())).toBe("june");
  });

  test("while another tab writes elsewhere; at the next start that is open in both", async () => {
    const here = await phone.started();
    await say(here);
    const there = await phone.started();
    there.newSession();
    await idle();
    const ofThere = open(there);
    expect(open(await phone.started())).toBe(ofThere);
    await say(here);
    expect(open(there)).toBe(ofThere);
    expect(open(await phone.started())).toBe(open(here));
  });
});

describe("a session that was taken out", () => {
  test("is not gone on with because it was the last written to", async () => {
    const desks = await phone.started();
    await say(desks);
    const removed = open(desks);
    await phone.store.remove(removed);
    const again = await phone.restarted();
    expect(open(again)).not.toBe(removed);
    await say(again);
    expect(await phone.sessions()).toEqual([open(again)]);
  });

  test("is not gone on with because the note still names it", async () => {
    const desks = await phone.started();
    await say(desks);
    phone.save();
    const removed = open(desks);
    await phone.store.remove(removed);
    expect(open(desks)).not.toBe(removed);
    const again = await phone.restarted();
    expect(open(again)).not.toBe(removed);
    expect(phone.notes.get("session")).toBe(open(again));
  });
});

describe("until the log has told which session it is", () => {
  /** A phone at the second start, with its first session not noted. */
  async function atSecondStart() {
    const before = await phone.started();
    await say(before);
    const first = open(before);
    phone.notes = new Map();
    return { first, letGo: phone.store.holdUp(), desks: phone.start() };
  }

  test("what is said waits for it, and lands there", async () => {
    const { first, letGo, desks } = await atSecondStart();
    const notebook = desks.own.notebook.peek();
    const saying = [notebook.write([fish()]), notebook.write([fish(), fish()])];
    await idle();
    expect(await phone.sessions()).toEqual([first]);
    letGo();
    const kept = await Promise.all(saying);
    expect(kept.map(({ isStored }) => isStored)).toEqual([true, true]);
    await notebook.ready;
    expect(await phone.sessions()).toEqual([first, first, first, first]);
    expect(desks.own.session.value).toMatchObject({ id: first, count: 4 });
  });

  test("what asks which session is open, such as a board, waits too", async () => {
    const { first, letGo, desks } = await atSecondStart();
    const asking = desks.own.notebook.peek().settledId();
    letGo();
    expect(await asking).toBe(first);
  });

  test("a correction that is spoken meanwhile is of the last entry there", async () => {
    const { letGo, desks } = await atSecondStart();
    const scribe = new Scribe({
      notebook: desks.own.notebook.peek(),
      trouble: () => undefined,
      settings: () => DEFAULT_SETTINGS,
      now: () => phone.wall,
      setLevel: () => {},
      tell: () => {},
      warn: () => {},
      remind: () => {},
    });
    const hearing = scribe.hear({ alternatives: ["scratch that"], by: "web" });
    letGo();
    await hearing;
    expect(desks.own.session.value.count).toBe(0);
  });

  test("a session that is opened meanwhile is the one, and what was said before is in the other", async () => {
    const { first, letGo, desks } = await atSecondStart();
    const saying = say(desks);
    desks.openSession("june");
    letGo();
    await saying;
    await idle();
    expect(open(desks)).toBe("june");
    expect(phone.notes.get("session")).toBe("june");
    expect(await phone.sessions()).toEqual([first, first]);
  });

  test.each([
    ["first steps are", (desks: Desks) => desks.practise()],
    ["the sample is", (desks: Desks) => void desks.playSample(1, async () => {})],
  ])("%s open as before, and the right session behind it", async (_, begin) => {
    const { first, letGo, desks } = await atSecondStart();
    begin(desks);
    await vi.waitFor(() => expect(desks.current.value).not.toBe(desks.own));
    const shown = desks.current.value;
    const { id } = shown.notebook.peek();
    letGo();
    await desks.own.notebook.peek().ready;
    expect(desks.current.value).toBe(shown);
    expect(shown.notebook.peek().id).toBe(id);
    desks.stopSample();
    expect(desks.current.value.session.value).toMatchObject({ id: first, count: 1 });
  });

  test("nothing is shown of the noted one, which it may not be", async () => {
    const before = await phone.started();
    await say(before);
    phone.save();
    before.newSession();
    await before.own.notebook.peek().write([fish(), fish()]);
    const letGo = phone.store.holdUp();
    phone.notes = new Map(phone.saved);
    const desks = phone.start();
    const seen: number[] = [];
    desks.own.session.subscribe(({ count }) => void seen.push(count));
    await idle();
    expect(seen).toEqual([0]);
    letGo();
    await desks.own.notebook.peek().ready;
    expect(new Set(seen)).toEqual(new Set([0, 2]));
  });

  test("a log that does not answer leaves the noted one, and what is said is not kept waiting", async () => {
    phone.notes.set("session", "june");
    phone.store.holdUp();
    vi.useFakeTimers();
    try {
      const saying = say(phone.start());
      await vi.advanceTimersByTimeAsync(PATIENCE_MS);
      const { events } = await saying;
      expect(events.map(({ session }) => session)).toEqual(["june"]);
    } finally {
      vi.useRealTimers();
    }
  });

  test("a log that cannot be read leaves the noted one", async () => {
    phone.notes.set("session", "june");
    phone.store.failing = "refused";
    const desks = await phone.started();
    const { events, isStored } = await say(desks);
    desks.own.keeper.close();
    expect([isStored, ...events.map(({ session }) => session)]).toEqual([false, "june"]);
  });
});

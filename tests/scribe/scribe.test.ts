import { describe, expect, test } from "vitest";
import { Bank, MINUTE_MS, NINE } from "./bank.ts";

const POUND_G = 453.59237;

describe("how much is said back", () => {
  test.each([
    ["tones only", "tones"],
    ["short answers", "short"],
    ["full answers", "full"],
  ])("is changed by %s, and nothing is logged", async (said, talkback) => {
    const bank = new Bank();
    await bank.hear({ alternatives: [said], by: "web" });
    expect(bank.settings.talkback).toBe(talkback);
    expect(bank.entries).toEqual([]);
    expect(bank.answer).toMatchObject({ asked: true });
  });
});

describe("what is said", () => {
  test("becomes one group of entries, in order, with what was heard", async () => {
    const bank = new Bank();
    const alternatives = ["fish two pounds ten centimetres shallower feeding", "fish to pounds"];
    await bank.hear({ alternatives, confidence: 0.9, by: "web", startedAt: NINE - 3000 });
    expect(bank.entries.map(({ kind }) => kind)).toEqual(["fish", "change", "feed"]);
    const [fish, change] = bank.session.entries;
    expect(fish?.at).toBe(NINE - 3000);
    expect(fish?.group).toBe(change?.group);
    expect(fish?.heard).toEqual({
      text: alternatives[0],
      alternatives: [alternatives[1]],
      confidence: 0.9,
      by: "web",
    });
    expect(await bank.store.session("a-session")).toHaveLength(3);
  });

  test("typed does the same", async () => {
    const bank = new Bank();
    await bank.hear({ alternatives: ["F1, two eight"], by: "typed" });
    expect(bank.session.spokenG).toBeCloseTo(2.5 * POUND_G, 9);
    expect(bank.session.entries[0]?.heard?.by).toBe("typed");
  });

  test("is kept to be looked at where the recogniser was unsure of a number", async () => {
    const bank = new Bank();
    await bank.hear({ alternatives: ["fish two pounds"], confidence: 0.3, by: "web" });
    await bank.hear({ alternatives: ["feeding"], confidence: 0.3, by: "web" });
    await bank.hear({ alternatives: ["fish two pounds"], confidence: 0.8, by: "web" });
    expect(bank.session.entries.map(({ verdict }) => verdict)).toEqual(["check", "log", "log"]);
    expect(bank.told.map(({ outcome }) => outcome)).toEqual(["check", "logged", "logged"]);
  });

  test("is kept to be looked at, numbers or none, where the ears inside the app were unsure", async () => {
    const bank = new Bank();
    await bank.hear({ alternatives: ["feeding"], confidence: 0.3, by: "offline" });
    await bank.hear({ alternatives: ["feeding"], confidence: 0.6, by: "offline" });
    expect(bank.session.entries.map(({ verdict }) => verdict)).toEqual(["check", "log"]);
  });

  test("is kept aside without a word where it is not for the log", async () => {
    const bank = new Bank();
    const last = await bank.hear({ alternatives: ["he's had two pounds off me"], by: "web" });
    expect(last).toMatchObject({ verdict: "ignore", understood: [] });
    expect(bank.entries).toEqual([]);
    expect(bank.session.heardLines.map(({ heard }) => heard.text)).toEqual([
      "he's had two pounds off me",
    ]);
    expect(bank.told).toEqual([]);
  });

  test("counts only after the call word where one is set", async () => {
    const bank = new Bank();
    bank.settings = { ...bank.settings, callWord: "scribe" };
    await bank.say("fish two pounds", "scribe fish three pounds");
    expect(bank.session.spokenG).toBeCloseTo(3 * POUND_G, 9);
  });

  test("may be a word of the angler's own", async () => {
    const bank = new Bank();
    await bank.plan({ ownSpecies: [{ name: "silver orfe", spoken: ["silver orfe"] }] });
    await bank.say("silver orfe two pounds");
    expect(bank.entries).toMatchObject([{ kind: "fish", species: "silver orfe" }]);
  });
});

describe("what is answered", () => {
  test("is said back after it is stored", async () => {
    const bank = new Bank();
    const stored: number[] = [];
    bank.scribe = bank.newScribe();
    bank.told.push = (...answers) => {
      stored.push(bank.session.count);
      return Array.prototype.push.apply(bank.told, answers);
    };
    await bank.say("fish two pounds eight");
    expect(stored).toEqual([1]);
    expect(bank.answer).toMatchObject({ outcome: "logged", short: "Fish, 2 pounds 8 ounces." });
    expect(bank.answer?.full).toBe("Fish, 2 pounds 8 ounces. 2 pounds 8 ounces from 1 fish.");
  });

  test("is a warning where it is not stored, and the entry still counts", async () => {
    const bank = new Bank("quota");
    const last = await bank.hear({ alternatives: ["fish two pounds"], by: "web" });
    expect(last.isStored).toBe(false);
    expect(bank.session.count).toBe(1);
    expect(bank.answer?.outcome).toBe("warning");
    expect(bank.answer?.short).toContain("Not stored yet. The phone has no room");
    expect(last.answer).toBe(bank.answer?.full);
  });

  test("is a warning also where half of it is not stored and half not understood", async () => {
    const bank = new Bank("quota");
    await bank.hear({ alternatives: ["fish two pounds, take out fish nine"], by: "web" });
    expect(bank.session.count).toBe(1);
    expect(bank.answer?.outcome).toBe("warning");
    expect(bank.answer?.short).toContain("no fish 9");
  });

  test("comes to a question without an entry", async () => {
    const bank = new Bank();
    await bank.say("fish two pounds, what have I got");
    expect(bank.entries).toHaveLength(1);
    expect(bank.session.heardLines).toEqual([]);
    expect(bank.answer).toMatchObject({ asked: true, outcome: "logged" });
    expect(bank.answer?.short).toBe("Fish, 2 pounds. 2 pounds from 1 fish.");
    await bank.say("what have I got");
    expect(bank.answer).toEqual({
      asked: true,
      short: "2 pounds from 1 fish.",
      full: "2 pounds from 1 fish.",
    });
  });

  test("says what must be looked at, and why", async () => {
    const bank = new Bank();
    await bank.say("roach fifty pounds");
    expect(bank.answer?.outcome).toBe("check");
    expect(bank.answer?.short).toBe("Roach, 50 pounds. To check.");
    expect(bank.answer?.full).toMatch(/To check: .*\.$/);
  });

  test("tells who types that nothing was understood", async () => {
    const bank = new Bank();
    await bank.hear({ alternatives: ["hello there"], by: "typed" });
    expect(bank.told).toEqual([]);
    await bank.scribe.type("hello there");
    expect(bank.answer?.outcome).toBe("not-understood");
  });
});

describe("a correction", () => {
  test("changes the last fish, and is said back as it now stands", async () => {
    const bank = new Bank();
    await bank.say("fish two pounds", "feeding", "make that three pounds");
    expect(bank.session.spokenG).toBeCloseTo(3 * POUND_G, 9);
    expect(bank.answer).toMatchObject({ outcome: "logged", short: "Now fish, 3 pounds." });
  });

  test("in the same breath means what was said before it", async () => {
    const bank = new Bank();
    await bank.say("F1 two pounds");
    await bank.say("depth half a metre no make that sixty centimetres");
    await bank.say("fish two pounds no make that three pounds");
    expect(bank.session.spokenG).toBeCloseTo(5 * POUND_G, 9);
    expect(bank.session.setUp.depthMm).toBe(600);
  });

  test("by number means that fish, whatever came since", async () => {
    const bank = new Bank();
    await bank.say("fish two pounds", "three small roach", "F1 one pound", "fish five was a tench");
    expect(bank.entries[2]).toMatchObject({ species: "tench", weightG: POUND_G });
    await bank.say("take out fish two");
    expect(bank.session.count).toBe(4);
  });

  test("of what is not there is said to be one, and is kept as heard", async () => {
    const bank = new Bank();
    await bank.say("scratch that");
    expect(bank.answer).toMatchObject({
      outcome: "not-understood",
      short: "There is nothing to take back.",
    });
    await bank.say("take out fish nine");
    expect(bank.answer?.short).toBe("There is no fish 9.");
    await bank.say("make that three pounds");
    expect(bank.answer?.short).toBe("There is nothing to correct.");
    expect(bank.session.heardLines).toHaveLength(3);
  });
});

describe("scratch that", () => {
  test("takes a whole utterance back", async () => {
    const bank = new Bank();
    await bank.say("feeding", "fish two pounds ten centimetres shallower", "scratch that");
    expect(bank.entries).toEqual([{ kind: "feed" }]);
    expect(bank.answer?.outcome).toBe("taken-back");
    expect(bank.answer?.short).toBe("Taken back: fish, 2 pounds, 10 centimetres shallower.");
  });

  test("in the same breath takes back the statement before it", async () => {
    const bank = new Bank();
    await bank.say("feeding, fish two pounds, scratch that");
    expect(bank.entries.map(({ kind }) => kind)).toEqual(["feed"]);
  });

  test("takes a correction back first, then the entry", async () => {
    const bank = new Bank();
    await bank.say("fish two pounds", "make that three pounds", "scratch that");
    expect(bank.session.spokenG).toBeCloseTo(2 * POUND_G, 9);
    expect(bank.answer?.short).toBe("Back to fish, 2 pounds.");
    await bank.say("scratch that");
    expect(bank.session.count).toBe(0);
  });

  test("said twice takes two things back", async () => {
    const bank = new Bank();
    await bank.say("fish one pound", "fish two pounds", "fish three pounds");
    await bank.say("scratch that", "scratch that");
    expect(bank.session.spokenG).toBeCloseTo(POUND_G, 9);
  });

  test("leaves a correction alone that something came after", async () => {
    const bank = new Bank();
    await bank.say("fish two pounds", "make that three pounds", "feeding", "scratch that");
    expect(bank.session.spokenG).toBeCloseTo(3 * POUND_G, 9);
    expect(bank.entries.map(({ kind }) => kind)).toEqual(["fish"]);
  });
});

describe("after a reload", () => {
  test("the session goes on where it was, and a correction finds its fish", async () => {
    const bank = new Bank();
    await bank.say("fish two pounds");
    bank.scribe = bank.newScribe();
    await bank.say("make that four pounds");
    expect(bank.session.spokenG).toBeCloseTo(4 * POUND_G, 9);
  });

  test("reminders go on, and what was warned of is not warned of again", async () => {
    const bank = new Bank();
    await bank.plan({ netLimitG: 10 * POUND_G });
    await bank.say("nudge me every three minutes", "fish nine and a half pounds");
    expect(bank.reminded).toEqual([
      "Net 1 may be over its limit: 9 pounds 8 ounces of 10 pounds by your word.",
    ]);
    bank.scribe = bank.newScribe();
    await bank.notebook.ready;
    bank.wait(0);
    expect(bank.reminded).toHaveLength(1);
    bank.wait(1);
    expect(bank.reminded.at(-1)).toBe("Nudge");
    bank.wait(2);
    expect(bank.reminded).toHaveLength(2);
    bank.wait(1);
    expect(bank.reminded).toHaveLength(3);
    expect(bank.now).toBe(NINE + 6 * MINUTE_MS);
  });
});

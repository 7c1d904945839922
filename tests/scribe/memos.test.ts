import { signal } from "@preact/signals";
import { beforeEach, describe, expect, it } from "vitest";
import { MemoryMemos } from "../../src/log/memory-memos.ts";
import { Memos } from "../../src/scribe/memos.ts";
import { Notebook } from "../../src/scribe/notebook.ts";
import { Bank } from "./bank.ts";

const SOUND = Uint8Array.of(1, 2, 3);
/** Read with a doubt, as the ears were not sure of it. */
const DOUBTFUL = { alternatives: ["carp two pounds"], confidence: 0.2, by: "offline" } as const;

let bank: Bank;
let store: MemoryMemos;
let notebook: ReturnType<typeof signal<Notebook>>;
let memos: Memos;
let isOn: boolean;
const settled = () => new Promise((done) => setTimeout(done));

beforeEach(async () => {
  bank = new Bank();
  store = new MemoryMemos();
  notebook = signal(bank.notebook);
  isOn = true;
  memos = new Memos({ store, notebook: notebook as never, log: bank.store, isOn: () => isOn });
  await settled();
});

async function hearInDoubt() {
  const last = await bank.scribe.hear({ ...DOUBTFUL, startedAt: bank.now });
  await memos.keep({ text: last.text, at: last.at, sound: SOUND });
  const entry = bank.session.entries.at(-1);
  if (entry?.verdict !== "check") throw new Error("Not in doubt.");
  return entry;
}

describe("the sound of what is in doubt", () => {
  it("is kept with its entry", async () => {
    const { id } = await hearInDoubt();
    expect(memos.ids.value).toEqual(new Set([id]));
    expect(await memos.sound(id)).toEqual(SOUND);
  });

  it("is kept with a line that was not taken", async () => {
    const last = await bank.scribe.hear({
      alternatives: ["that was a lovely fish"],
      by: "offline",
      startedAt: bank.now,
    });
    await memos.keep({ text: last.text, at: last.at, sound: SOUND });
    expect([...memos.ids.value]).toEqual(bank.session.heardLines.map(({ id }) => id));
    expect(memos.ids.value.size).toBe(1);
  });

  it("is not kept of what was sure", async () => {
    const last = await bank.scribe.hear({
      alternatives: ["carp two pounds"],
      confidence: 1,
      by: "offline",
      startedAt: bank.now,
    });
    await memos.keep({ text: last.text, at: last.at, sound: SOUND });
    expect(memos.ids.value.size).toBe(0);
    expect(await store.ids(bank.session.id)).toEqual([]);
  });

  it("is not kept unless that is switched on, whatever brings it", async () => {
    isOn = false;
    await hearInDoubt();
    expect(memos.ids.value.size).toBe(0);
    expect(await store.ids(bank.session.id)).toEqual([]);
  });

  it.each(["settle", "withdraw"] as const)("goes with %s", async (what) => {
    const entry = await hearInDoubt();
    await bank.hand[what](entry);
    await settled();
    expect(memos.ids.value.size).toBe(0);
    expect(await memos.sound(entry.id)).toBeUndefined();
  });

  it("goes with its session", async () => {
    const { id } = await hearInDoubt();
    await bank.store.remove(bank.session.id);
    await settled();
    expect(await memos.sound(id)).toBeUndefined();
  });

  it("is there again when the session is opened again, and cleared if settled meanwhile", async () => {
    const { id } = await hearInDoubt();
    const open = async () => {
      const again = new Notebook(bank.session.id, bank.store, bank.keeper);
      const later = new Memos({
        store,
        notebook: signal(again),
        log: bank.store,
        isOn: () => true,
      });
      await again.ready;
      await settled();
      return later.ids.value;
    };
    expect(await open()).toEqual(new Set([id]));
    await store.put({ id: "of nothing", session: bank.session.id, sound: SOUND });
    expect(await open()).toEqual(new Set([id]));
    expect(await store.ids(bank.session.id)).toEqual([id]);
  });

  it("stays while its session cannot be read, which says nothing of what is in doubt", async () => {
    const { id } = await hearInDoubt();
    bank.store.failing = "blocked";
    const unread = new Notebook(bank.session.id, bank.store, bank.keeper);
    new Memos({ store, notebook: signal(unread), log: bank.store, isOn: () => true });
    await unread.ready;
    await settled();
    bank.store.failing = undefined;
    await bank.keeper.retry();
    await settled();
    expect(unread.session.value.entries).toHaveLength(1);
    expect(await store.ids(bank.session.id)).toEqual([id]);
  });
});

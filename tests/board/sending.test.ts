/** From a log to the board and into a reader's hands, by way of a real server. */
import { expect, test, vi } from "vitest";
import type { Heard } from "../../src/log/event.ts";
import { allSent } from "./all-sent.ts";
import { boardOfFile } from "./board-of-file.ts";
import { opened } from "./opened.ts";
import { Phone } from "./phone.ts";
import { Watcher } from "./watcher.ts";

const local = boardOfFile();
const within = { timeout: 15_000, interval: 20 };
const settled = (phone: Phone) => allSent(phone, within);

/** What one seat says, as somebody else reads it; each test has its own seats. */
async function watch(seat: string) {
  const watcher = opened(new Watcher(await local.invite(`${seat}-watch`)));
  await vi.waitFor(() => expect(watcher.lives).toBe(1), within);
  const said = () => watcher.said.filter(({ from }) => from.seat === seat);
  const ids = () =>
    said().flatMap(({ message }) => (message?.is === "event" ? [message.event.id] : []));
  return { said, ids };
}

test("what is logged reaches whoever reads, with who says it and when the server had it", async () => {
  const { said, ids } = await watch("peg-1");
  const phone = opened(new Phone());
  phone.open(await phone.join(await local.invite("peg-1")));
  const [first] = await phone.logFish(1);
  await vi.waitFor(() => expect(ids()).toContain(first), within);
  const [standing, fish] = said();
  expect(standing?.message).toMatchObject({ is: "standing", standing: { name: "Angler peg-1" } });
  expect(fish?.from.subject).toBe(`pegscribe.osier.${phone.session}.peg-1`);
  expect(fish?.from.place).toBe((standing?.from.place ?? 0) + 1);
  expect(Math.abs((fish?.from.at ?? 0) - Date.now())).toBeLessThan(10_000);
  await settled(phone);
});

test("nothing is sent before joining, and joining in the middle sends what the session has", async () => {
  const { said, ids } = await watch("peg-2");
  const phone = opened(new Phone());
  const before = await phone.logFish(40);
  await phone.store.append([
    {
      ...{ id: "of-another", session: "another", verdict: "log" },
      body: { kind: "entry", statement: { kind: "drop" } },
    },
  ]);
  expect(await phone.outbox.count()).toBe(0);
  phone.open(await phone.join(await local.invite("peg-2")));
  const after = await phone.logFish(3);
  await settled(phone);
  await vi.waitFor(() => expect(said().length).toBe(44), within);
  expect(ids()).toEqual([...before, ...after]);
});

test("a session from elsewhere is sent, too, whatever it and its entries are called", async () => {
  const { ids } = await watch("peg-12");
  const phone = opened(new Phone(0, "of peg 1.2\r\n"));
  const body = { kind: "entry", statement: { kind: "drop" } } as const;
  const { id } = await phone.log(body, { id: "one\r\nNats-Rollup: all" });
  phone.open(await phone.join(await local.invite("peg-12")));
  const after = await phone.logFish(2);
  await settled(phone);
  await vi.waitFor(() => expect(ids()).toEqual([id, ...after]), within);
});

test("slips put right in a session of another day stay off the board", async () => {
  const { ids } = await watch("peg-3");
  const phone = opened(new Phone());
  const joined = await phone.join(await local.invite("peg-3"));
  phone.open(joined);
  const settle = { kind: "settle", target: "some-entry" } as const;
  await phone.log(settle, { session: "0199d3d0-0000-7000-8000-000000000001" });
  await phone.log(settle, { session: "of an old file" });
  const [own] = await phone.logFish(1);
  await settled(phone);
  await vi.waitFor(() => expect(ids()).toEqual([own]), within);
});

test("neither a note nor a word that was heard goes out, unless it is switched on", async () => {
  const heard: Heard = { text: "private words", alternatives: ["privy birds"], by: "web" };
  const logAll = async (phone: Phone) => {
    await phone.log({ kind: "entry", statement: { kind: "drop" } }, { heard });
    await phone.log({ kind: "heard" }, { heard, verdict: "ignore" });
    await phone.log({ kind: "entry", statement: { kind: "note", text: "private note" } });
    await phone.log({
      ...{ kind: "replace", target: "a", statement: { kind: "note", text: "private note" } },
    });
    await phone.log({
      ...{ kind: "entry", statement: { kind: "remind", everyMs: 60_000, about: "private call" } },
    });
    const plan = { notes: "private plan", water: "private water", peg: "private peg", targetG: 9 };
    await phone.log({ kind: "plan", plan });
  };
  const [close, free] = [opened(new Phone()), opened(new Phone())];
  const { said } = await watch("peg-4");
  const { said: saidFreely } = await watch("peg-5");
  close.open(await close.join(await local.invite("peg-4")));
  free.open(await free.join(await local.invite("peg-5"), { notes: true, heard: true }));
  await logAll(close);
  await logAll(free);
  await Promise.all([settled(close), settled(free)]);
  await vi.waitFor(() => expect([said().length, saidFreely().length]).toEqual([7, 7]), within);
  expect(JSON.stringify(said())).not.toMatch(/priv/);
  const told = JSON.stringify(saidFreely());
  for (const words of ["words", "note", "call", "plan"]) expect(told).toContain(`private ${words}`);
  expect(told).not.toMatch(/private (water|peg)/);
});

test("a phone that was offline for a session brings all of it, once, when it is back", async () => {
  const { ids } = await watch("peg-6");
  const phone = opened(new Phone());
  const joined = await phone.join(await local.invite("peg-6"));
  phone.open({ ...joined, invitation: { ...joined.invitation, address: "ws://127.0.0.1:9" } });
  const logged = await phone.logFish(120);
  await vi.waitFor(() => expect(phone.troubles.length).toBeGreaterThan(1), within);
  expect(new Set(phone.troubles)).toEqual(new Set(["out-of-reach"]));
  expect(await phone.outbox.count()).toBe(120);
  phone.close();
  phone.open(joined);
  await settled(phone);
  await vi.waitFor(() => expect(ids()).toEqual(logged), within);
});

test("what was sent and not marked as sent is sent again, and kept once", async () => {
  const { ids } = await watch("peg-7");
  const phone = opened(new Phone());
  const joined = await phone.join(await local.invite("peg-7"));
  const { done } = phone.outbox;
  phone.outbox.done = () => Promise.reject(new Error("the page went in this moment"));
  const logged = await phone.logFish(5);
  phone.open(joined);
  await vi.waitFor(() => expect(ids().length).toBe(5), within);
  phone.close();
  phone.outbox.done = done;
  phone.open(joined);
  await settled(phone);
  const [last] = await phone.logFish(1);
  await vi.waitFor(() => expect(ids()).toEqual([...logged, last]), within);
});

test("leaving empties the outbox, and what comes after stays here", async () => {
  const { ids } = await watch("peg-8");
  const phone = opened(new Phone());
  const joined = await phone.join(await local.invite("peg-8"));
  await phone.logFish(2);
  await phone.outbox.leave();
  expect(await phone.outbox.count()).toBe(0);
  phone.open(joined);
  await phone.logFish(1);
  await vi.waitFor(() => expect(phone.hasLeft).toBe(true), within);
  expect(await phone.outbox.count()).toBe(0);
  expect(ids()).toEqual([]);
});

test("what waits for another board is not sent to the one that was left", async () => {
  const { ids } = await watch("peg-9");
  const phone = opened(new Phone());
  const old = await phone.join(await local.invite("peg-9"));
  const { since } = await phone.join(await local.invite("peg-10"));
  await phone.logFish(2);
  // Joined by a clock that was set back, both may be of one moment.
  phone.open({ ...old, since });
  await vi.waitFor(() => expect(phone.hasLeft).toBe(true), within);
  expect(await phone.outbox.count()).toBe(2);
  expect(ids()).toEqual([]);
});

test("a page that knows only of an earlier joining sends no more, not even to the same board", async () => {
  const { said } = await watch("peg-13");
  const phone = opened(new Phone());
  const joined = await phone.join(await local.invite("peg-13"));
  await phone.log({ kind: "entry", statement: { kind: "note", text: "not shared any more" } });
  phone.open({ ...joined, since: joined.since - 1, shares: { notes: true, heard: true } });
  await vi.waitFor(() => expect(phone.hasLeft).toBe(true), within);
  expect(await phone.outbox.count()).toBe(1);
  expect(JSON.stringify(said())).not.toContain("not shared any more");
});

test("what was taken out of the log before it was sent stays off the board", async () => {
  const { ids } = await watch("peg-11");
  const phone = opened(new Phone());
  const joined = await phone.join(await local.invite("peg-11"));
  await phone.logFish(2);
  await phone.store.remove(phone.session);
  await phone.store.readmit([phone.session]);
  const [after] = await phone.logFish(1);
  phone.open(joined);
  await settled(phone);
  await vi.waitFor(() => expect(ids()).toEqual([after]), within);
});

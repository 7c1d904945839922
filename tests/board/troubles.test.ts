/** What goes wrong between a phone and its board, and what becomes of what was logged. */
import { jetstream } from "@nats-io/jetstream";
import { expect, test, vi } from "vitest";
import { connectTo } from "../../src/board/connection.ts";
import { streamOf, subjectFor } from "../../src/board/subjects.ts";
import { nodeSocket } from "../tools/board/node-socket.ts";
import { allSent } from "./all-sent.ts";
import { boardOfFile } from "./board-of-file.ts";
import { LocalBoard, MINUTE_MS } from "./local-board.ts";
import { opened } from "./opened.ts";
import { Phone } from "./phone.ts";
import { Watcher } from "./watcher.ts";

const local = boardOfFile();

const within = { timeout: 30_000, interval: 20 };
const pause = (ms: number) => new Promise((done) => setTimeout(done, ms));
/** Longer than the first wait after a passing trouble, which is a second at most. */
const LONG_MS = 2500;

const joining = {
  "a wrong credential": async () => {
    const [mine, other] = [await local.invite("peg-1"), await local.invite("peg-2")];
    return { ...mine, seed: other.seed };
  },
  "an expired one": () => local.invite("peg-1", Date.now() - MINUTE_MS),
  "another's seat": async () => ({ ...(await local.invite("peg-1")), seat: "peg-2" }),
  "a board that is not there": async () => ({ ...(await local.invite("peg-1")), board: "marram" }),
};

test.each([
  ["a wrong credential", "refused"],
  ["an expired one", "expired"],
  ["another's seat", "not-allowed"],
  ["a board that is not there", "not-allowed"],
] as const)("%s is refused, said, not tried again at once, and loses nothing", async (how, why) => {
  const phone = opened(new Phone());
  phone.open(await phone.join(await joining[how]()));
  await phone.logFish(3);
  await vi.waitFor(() => expect(phone.troubles).toEqual([why]), within);
  await phone.logFish(1);
  await pause(LONG_MS);
  expect([phone.connects, phone.troubles, await phone.outbox.count()]).toEqual([1, [why], 4]);
  phone.hurry();
  await vi.waitFor(() => expect(phone.troubles).toEqual([why, why]), within);
});

test("a reader is told why a board can't be read", async () => {
  const wrong = opened(new Watcher(await joining["a wrong credential"]()));
  const other = opened(new Watcher(await joining["a board that is not there"]()));
  await vi.waitFor(
    () => expect([wrong.troubles, other.troubles]).toEqual([["refused"], ["not-allowed"]]),
    within,
  );
});

test("a credential that ends in the middle is said to be over, and what waits stays", async () => {
  const phone = opened(new Phone());
  phone.open(await phone.join(await local.invite("peg-3", Date.now() + 2500)));
  await phone.logFish(1);
  await allSent(phone, within);
  await vi.waitFor(() => expect(phone.troubles).toEqual(["expired"]), within);
  await phone.logFish(2);
  await pause(LONG_MS);
  expect([phone.connects, await phone.outbox.count()]).toEqual([1, 2]);
});

test("of a full board it is said, what is there stays, and what waits waits", async () => {
  const small = await LocalBoard.open("osier", 8192);
  try {
    const watcher = opened(new Watcher(await small.invite("peg-2")));
    const phone = opened(new Phone());
    phone.open(await phone.join(await small.invite("peg-1")));
    const ids = await phone.logFish(100);
    await vi.waitFor(() => expect(phone.troubles).toEqual(["full"]), within);
    const waiting = await phone.outbox.count();
    await vi.waitFor(() => expect(watcher.ids.length).toBe(100 - waiting), within);
    expect(watcher.ids.length).toBeGreaterThan(5);
    expect(ids).toEqual(expect.arrayContaining(watcher.ids));
    await pause(LONG_MS);
    expect([phone.connects, await phone.outbox.count()]).toEqual([1, waiting]);
  } finally {
    await small.close();
  }
});

test("a message too large waits by itself, and holds nothing up", async () => {
  const watcher = opened(new Watcher(await local.invite("peg-4-watch")));
  const phone = opened(new Phone());
  phone.open(await phone.join(await local.invite("peg-4"), { notes: false, heard: true }));
  const [first] = await phone.logFish(1);
  const alternatives = Array.from({ length: 10 }, () => "x".repeat(9000));
  await phone.log(
    { kind: "entry", statement: { kind: "drop" } },
    { heard: { text: "x", alternatives, by: "web" } },
  );
  const rest = await phone.logFish(40);
  await vi.waitFor(
    () => expect(watcher.ids).toEqual(expect.arrayContaining([first, ...rest])),
    within,
  );
  await vi.waitFor(async () => expect(await phone.outbox.count()).toBe(1), within);
  expect([phone.tooLarge, phone.troubles]).toEqual([1, []]);
});

test("a server that takes smaller messages than we know of holds nothing up either", async () => {
  const strict = await LocalBoard.open();
  try {
    await strict.board.asKeeper((manager) =>
      manager.streams.update(streamOf("osier"), { max_msg_size: 2000 }),
    );
    const watcher = opened(new Watcher(await strict.invite("peg-2")));
    const phone = opened(new Phone());
    phone.open(await phone.join(await strict.invite("peg-1"), { notes: true, heard: false }));
    const text = "x".repeat(1990);
    await phone.log({ kind: "entry", statement: { kind: "note", text } });
    const ids = await phone.logFish(3);
    await vi.waitFor(() => expect(watcher.ids).toEqual(ids), within);
    await vi.waitFor(() => expect(phone.tooLarge).toBe(1), within);
    expect(await phone.outbox.count()).toBe(1);
  } finally {
    await strict.close();
  }
});

test.each([
  ["no JSON", "{"],
  ["of another shape", JSON.stringify({ is: "event", sentAt: 1, event: { kind: "sandwich" } })],
  ["empty", ""],
  ["deep", "[".repeat(50_000)],
])(
  "a message that is damaged (%s) is passed on as damaged, and reading goes on",
  async (_, text) => {
    const invitation = await local.invite("peg-5");
    const watcher = opened(new Watcher(await local.invite("peg-5-watch")));
    await vi.waitFor(() => expect(watcher.lives).toBe(1), within);
    const before = watcher.damaged;
    const connection = await connectTo(invitation, nodeSocket);
    const bytes = new TextEncoder().encode(text);
    await jetstream(connection).publish(subjectFor(invitation, "a-session"), bytes);
    await connection.close();
    await vi.waitFor(() => expect(watcher.damaged).toBe(before + 1), within);
    const phone = opened(new Phone());
    phone.open(await phone.join(await local.invite("peg-6")));
    const [id] = await phone.logFish(1);
    await vi.waitFor(() => expect(watcher.ids).toContain(id), within);
    expect(watcher.damaged).toBe(before + 1);
  },
);

test("a server killed in the middle, again and again, loses nothing and doubles nothing", async () => {
  const own = await LocalBoard.open();
  try {
    const watcher = opened(new Watcher(await own.invite("coach")));
    const phones = await Promise.all(
      ["peg-1", "peg-2", "peg-3"].map(async (seat) => {
        const phone = opened(new Phone());
        phone.open(await phone.join(await own.invite(seat)));
        return phone;
      }),
    );
    const logged: string[][] = [];
    let isOver = false;
    const logging = phones.map(async (phone) => {
      const ids: string[] = [];
      logged.push(ids);
      while (!isOver) {
        ids.push(...(await phone.logFish(1)));
        await pause(5);
      }
    });
    for (let kill = 0; kill < 3; kill++) {
      await pause(1200);
      await own.board.stop("SIGKILL");
      await pause(700);
      await own.board.restart();
      for (const phone of phones) phone.hurry();
    }
    isOver = true;
    await Promise.all(logging);
    for (const phone of phones) {
      await allSent(phone, within);
    }
    const all = logged.flat();
    expect(all.length).toBeGreaterThan(300);
    await vi.waitFor(() => expect(watcher.ids.length).toBeGreaterThanOrEqual(all.length), within);
    await pause(500);
    expect([...watcher.ids].sort()).toEqual([...all].sort());
    expect(watcher.troubles.length).toBeGreaterThanOrEqual(3);
    const places = watcher.said.map(({ from }) => from.place);
    expect(places).toEqual(places.map((_, n) => n + 1));
  } finally {
    await own.close();
  }
});

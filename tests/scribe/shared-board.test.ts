/** Who is on a board, as the page keeps it; its worker's part is played. */
import { signal } from "@preact/signals";
import { beforeEach, expect, test } from "vitest";
import type { FromBoard, ToBoard } from "../../src/board/talk.ts";
import { SteadyClock } from "../../src/log/clock.ts";
import { MemoryStore } from "../../src/log/memory-store.ts";
import type { BoardSignals } from "../../src/scribe/board/later-board.ts";
import { SharedBoard } from "../../src/scribe/board/shared-board.ts";
import { draft } from "../log/store-contract.ts";
import { MEMBERSHIP } from "../screens/fake-board.ts";

class FakeWorker {
  onmessage: ((event: MessageEvent<FromBoard>) => void) | null = null;
  onerror: (() => void) | null = null;
  isEnded = false;
  readonly told: ToBoard["do"][] = [];
  postMessage(message: ToBoard) {
    this.told.push(message.do);
  }
  terminate() {
    this.isEnded = true;
  }
}

let workers: FakeWorker[];
let store: MemoryStore;

beforeEach(() => {
  workers = [];
  store = new MemoryStore(new SteadyClock());
});

/** A page with the log in it; two of them are two tabs. */
function page() {
  const shown: BoardSignals = {
    membership: signal(),
    sending: signal({ is: "off" }),
    reading: signal({ is: "off" }),
  };
  const board = new SharedBoard({
    ...{ shown, outbox: store.outbox, session: async () => "s" },
    hire: () => {
      const worker = new FakeWorker();
      workers.push(worker);
      return worker as unknown as Worker;
    },
  });
  return { board, shown };
}

const boardOf = ({ shown }: ReturnType<typeof page>) =>
  shown.membership.value?.invitation.board ?? "none";

test("on no board nothing is begun", async () => {
  const here = page();
  await here.board.goOn();
  expect([workers.length, boardOf(here), here.shown.sending.value]).toEqual([
    ...[0, "none", { is: "off" }],
  ]);
});

test("joining puts in what the session has, and begins; a reload goes on with it", async () => {
  await store.append([draft(), draft(), draft("another")]);
  const here = page();
  await here.board.join(MEMBERSHIP);
  expect(await store.outbox.count()).toBe(2);
  expect([boardOf(here), here.shown.sending.value, workers[0]?.told]).toEqual([
    ...["osier", { is: "opening" }, ["begin"]],
  ]);
  const reloaded = page();
  await reloaded.board.goOn();
  expect([boardOf(reloaded), workers[1]?.told]).toEqual(["osier", ["begin"]]);
});

test("looked at again, it hurries on with the same board, and finds what another tab did", async () => {
  const [here, there] = [page(), page()];
  await here.board.join(MEMBERSHIP);
  await there.board.goOn();
  await there.board.goOn();
  expect(workers[1]?.told).toEqual(["begin", "hurry"]);
  await here.board.leave();
  await there.board.goOn();
  expect([boardOf(there), workers.map(({ isEnded }) => isEnded)]).toEqual(["none", [true, true]]);
});

test("a worker that fell over is said, and another is hired when it is looked at again", async () => {
  const here = page();
  await here.board.join(MEMBERSHIP);
  workers[0]?.onerror?.();
  expect(here.shown.sending.value).toEqual({ is: "out-of-reach", waiting: 0 });
  await here.board.goOn();
  expect([workers.length, workers[1]?.told]).toEqual([2, ["begin"]]);
});

test("what could not be kept changes nothing, and sending goes on", async () => {
  const here = page();
  await here.board.join(MEMBERSHIP);
  store.outbox.leave = () => Promise.reject(new Error("no room"));
  await expect(here.board.leave()).rejects.toThrow("no room");
  expect([boardOf(here), workers.length, workers[1]?.told]).toEqual(["osier", 2, ["begin"]]);
});

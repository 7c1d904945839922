import { signal } from "@preact/signals";
import { beforeEach, expect, test } from "vitest";
import { Teller } from "../../src/board/picture/teller.ts";
import type { FromBoard, ToBoard } from "../../src/board/talk.ts";
import { MemoryOutbox } from "../../src/log/memory-outbox.ts";
import type { BoardSignals } from "../../src/scribe/board/later-board.ts";
import type { Reading, Sending } from "../../src/scribe/board/news.ts";
import { SharedBoard } from "../../src/scribe/board/shared-board.ts";
import { act, at, fish, Phones, pictureOf } from "../board-picture/script.ts";
import { MEMBERSHIP } from "../screens/fake-board.ts";

/** A worker whose part the test plays. */
class FakeWorker {
  onmessage: ((event: MessageEvent<FromBoard>) => void) | null = null;
  onerror = null;
  readonly told: ToBoard[] = [];
  postMessage(message: ToBoard) {
    this.told.push(message);
  }
  terminate() {}
  say(data: FromBoard) {
    this.onmessage?.({ data } as MessageEvent<FromBoard>);
  }
}

let shown: BoardSignals;
let board: SharedBoard;
let workers: FakeWorker[];

beforeEach(async () => {
  workers = [];
  shown = {
    membership: signal(),
    sending: signal<Sending>({ is: "off" }),
    reading: signal<Reading>({ is: "off" }),
  };
  board = new SharedBoard({
    ...{ shown, outbox: new MemoryOutbox(new Map()), session: async () => "a-session" },
    hire: () => {
      const worker = new FakeWorker();
      workers.push(worker);
      return worker as unknown as Worker;
    },
  });
  await board.join(MEMBERSHIP);
});

const seats = () => {
  const reading = shown.reading.value;
  return "view" in reading ? reading.view?.rows.map(({ seat, count }) => [seat, count]) : reading;
};

/** Two pegs, of which one catches a fish later: what the worker says of both, and then of one. */
function twoPegs() {
  const phones = new Phones();
  for (const seat of ["peg-1", "peg-2"]) phones.say(seat, 0, act("start"));
  const picture = pictureOf(phones.sent);
  const teller = new Teller(picture);
  const first = teller.tell(at(1));
  phones.say("peg-2", 2, fish(400));
  picture.receive(...(phones.sent.at(-1) as (typeof phones.sent)[number]));
  return [first, teller.tell(at(2))] as const;
}

test("what is told in pieces is shown whole, also after a trouble between them", () => {
  const [first, second] = twoPegs();
  board.follow();
  const [worker] = workers;
  worker?.say({ is: "opening" });
  expect(shown.reading.value).toEqual({ is: "opening" });
  worker?.say({ is: "news", patch: first });
  worker?.say({ is: "unread", trouble: "refused" });
  expect(shown.reading.value).toMatchObject({ is: "refused" });
  worker?.say({ is: "news", patch: second });
  expect(seats()).toEqual([
    ["peg-1", 0],
    ["peg-2", 1],
  ]);
});

test("out of reach, the board stays as it looked last", () => {
  const [first] = twoPegs();
  board.follow();
  workers[0]?.say({ is: "news", patch: first });
  workers[0]?.say({ is: "unread", trouble: "out-of-reach" });
  expect(shown.reading.value.is).toBe("out-of-reach");
  expect(seats()).toEqual([
    ["peg-1", 0],
    ["peg-2", 0],
  ]);
});

test("read anew it begins anew, and another board has nothing of the one before", async () => {
  const [first, second] = twoPegs();
  board.follow();
  workers[0]?.say({ is: "news", patch: first });
  workers[0]?.say({ is: "opening" });
  workers[0]?.say({ is: "news", patch: second });
  expect(seats()).toEqual([["peg-2", 1]]);
  await board.join({ ...MEMBERSHIP, standing: { name: "Ada" } });
  workers[1]?.say({ is: "news", patch: { ...first, rows: first.rows.slice(0, 1) } });
  expect(seats()).toEqual([["peg-1", 0]]);
});

test("the worker reads for as long as somebody looks", () => {
  const [one, other] = [board.follow(), board.follow()];
  const follows = () => workers[0]?.told.filter((told) => told.do === "follow");
  one();
  expect(follows()).toEqual([{ do: "follow", isOn: true }]);
  other();
  expect(follows()?.at(-1)).toEqual({ do: "follow", isOn: false });
  expect(shown.reading.value).toEqual({ is: "off" });
});

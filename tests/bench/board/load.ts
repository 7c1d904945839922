/**
 * Puts many phones onto a board of this machine and prints how long it takes until what was said is
 * seen: `npm run bench:board -- [--phones 200] [--minutes 10] [--speed 10]`.
 */
import { type ChildProcess, fork } from "node:child_process";
import { cpus, loadavg } from "node:os";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { jetstreamManager } from "@nats-io/jetstream";
import { connectTo } from "../../../src/board/connection.ts";
import { packed } from "../../../src/board/message.ts";
import { NatsReader } from "../../../src/board/nats-reader.ts";
import { BoardPicture } from "../../../src/board/picture/picture.ts";
import { streamOf } from "../../../src/board/subjects.ts";
import { LocalBoard } from "../../board/local-board.ts";
import { type Row, table } from "../../simulation/table.ts";
import { nodeSocket } from "../../tools/board/node-socket.ts";
import { spread } from "../times.ts";
import type { FromPhones, Play } from "./phones.ts";

const { values } = parseArgs({
  options: {
    phones: { type: "string", default: "200" },
    minutes: { type: "string", default: "10" },
    speed: { type: "string", default: "10" },
  },
});
const [count, minutes, speed] = [values.phones, values.minutes, values.speed].map(Number) as [
  number,
  number,
  number,
];

const MEGABYTE = 1024 * 1024;
const HOUR_MS = 3_600_000;
/** As often as a board that is looked at is worked out anew. */
const LOOK_MS = 1000;

interface Outcome {
  entries: number;
  seen: number;
  /** From the first word until the last was seen. */
  seconds: number;
  /** Milliseconds from the entry in the phone's log to its place in the picture, by entry. */
  delays: number[];
  /** Of a message, and of one with all that the server keeps beside it. */
  bytes: number[];
  storedBytes: number;
  /** Milliseconds of working out the whole board. */
  views: number[];
}

/** One run on a board of its own. @param isLate the phones find a network only once all is said */
async function run(isLate: boolean): Promise<Outcome> {
  const local = await LocalBoard.open("osier", 512 * MEGABYTE);
  const seats = Array.from({ length: count }, (_, n) => `peg-${n + 1}`);
  const invitations = await Promise.all(
    seats.map((seat) => local.invite(seat, Date.now() + 2 * HOUR_MS)),
  );
  const outcome: Outcome = {
    ...{ entries: 0, seen: 0, seconds: 0, storedBytes: 0 },
    ...{ delays: [], bytes: [], views: [] },
  };
  const picture = new BoardPicture();
  const reader = new NatsReader({
    invitation: await local.invite("watcher"),
    connect: (invitation) => connectTo(invitation, nodeSocket),
    onLive: () => {},
    onTrouble: (reason) => console.error(`The reader lost the board: ${reason}.`),
  });
  let [begunAt, lastAt] = [0, 0];
  reader.start((from, message) => {
    picture.receive(from, message);
    if (message?.is !== "event") return;
    lastAt = Date.now();
    outcome.seen += 1;
    outcome.delays.push(lastAt - message.event.at);
    outcome.bytes.push(packed(message).length);
  });
  const looking = setInterval(() => {
    const before = performance.now();
    picture.view(Date.now());
    outcome.views.push(performance.now() - before);
  }, LOOK_MS);
  const phones = fork(fileURLToPath(new URL("phones.ts", import.meta.url)), {
    execArgv: ["--import", "tsx"],
  });
  phones.send({ invitations, ms: minutes * 60_000, speed, isLate } satisfies Play);
  await ended(phones, (news) => {
    if (news.is !== "begun") return;
    begunAt = news.at;
    outcome.entries = news.entries;
  });
  const deadline = Date.now() + 60_000;
  while (outcome.seen < outcome.entries && Date.now() < deadline) await pause(20);
  outcome.seconds = (lastAt - begunAt) / 1000;
  clearInterval(looking);
  reader.stop();
  outcome.storedBytes = await storedBytes(local);
  await local.close();
  return outcome;
}

/** By the server's own count. */
async function storedBytes(local: LocalBoard): Promise<number> {
  const connection = await connectTo(await local.invite("counter"), nodeSocket);
  const manager = await jetstreamManager(connection, { checkAPI: false });
  const { state } = await manager.streams.info(streamOf("osier"));
  await connection.close();
  return state.bytes / state.messages;
}

const pause = (ms: number) => new Promise((done) => setTimeout(done, ms));

function ended(phones: ChildProcess, onNews: (news: FromPhones) => void): Promise<void> {
  return new Promise((done, failed) => {
    phones.on("message", onNews);
    phones.once("exit", (code) => (code === 0 ? done() : failed(new Error("The phones failed."))));
  });
}

const ms = (value: number): string => value.toFixed(value < 10 ? 1 : 0);

function rowOf(name: string, outcome: Outcome): Row {
  const { entries, seen, seconds, delays, bytes, storedBytes, views } = outcome;
  const delay = spread(delays);
  const size = spread(bytes);
  const view = spread(views);
  return [
    name,
    entries,
    entries - seen,
    ms(seconds),
    ms(seen / seconds),
    ...[delay.median, delay.p95, delay.p99].map(ms),
    `${size.median} (${size.p99})`,
    ms(storedBytes),
    `${ms(view.median)} (${ms(view.p99)})`,
  ];
}

const HEAD: Row = [
  `${count} phones, ${minutes} minutes`,
  "entries",
  "not seen",
  "seconds",
  "entries a second",
  "delay, half within (ms)",
  "95 in 100",
  "99 in 100",
  "bytes a message, middle (99 in 100)",
  "stored",
  "working out the board, middle (99 in 100) (ms)",
];

const load = () => (loadavg()[0] ?? Number.NaN).toFixed(1);
console.log(
  `npm run bench:board -- --phones ${count} --minutes ${minutes} --speed ${speed}; Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model}, ${new Date().toISOString().slice(0, 10)}\n`,
);
const before = load();
const paced = await run(false);
const late = await run(true);
console.log(
  table(HEAD, [
    rowOf(speed === 1 ? "at their own pace" : `${speed} times as fast`, paced),
    rowOf("all said before there is a network", late),
  ]),
);
console.log(`\nLoad of the machine ${before} before, ${load()} after.`);

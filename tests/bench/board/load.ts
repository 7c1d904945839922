/**
 * Puts many phones onto a board of this machine and prints how long it takes until what was said is
 * seen: `npm run bench:board -- [--phones 200] [--minutes 10] [--speed 10]`.
 */
import { type ChildProcess, fork } from "node:child_process";
import { once } from "node:events";
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
import { CountingSocket } from "./counting-socket.ts";
import type { Begun, ToPhones } from "./phones.ts";

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
  /** What the one who looks on had from the network for each, squeezed as it comes. */
  readBytes: number;
  /** Milliseconds of working out the whole board. */
  views: number[];
}

/** One run on a board of its own. */
async function run(speed: number | "at-once"): Promise<Outcome> {
  const local = await LocalBoard.open("osier", 512 * MEGABYTE);
  const seats = Array.from({ length: count }, (_, n) => `peg-${n + 1}`);
  const outcome: Outcome = {
    ...{ entries: 0, seen: 0, seconds: 0, storedBytes: 0, readBytes: 0 },
    ...{ delays: [], bytes: [], views: [] },
  };
  const picture = new BoardPicture();
  const counting = new CountingSocket();
  const reader = new NatsReader({
    invitation: await local.invite("watcher"),
    connect: (invitation) => connectTo(invitation, counting.socket),
    onLive: () => {},
    onTrouble: (reason) => console.error(`The reader lost the board: ${reason}.`),
  });
  let [introduced, lastAt] = [0, 0];
  reader.start((from, message) => {
    picture.receive(from, message);
    if (message?.is !== "event") {
      introduced += 1;
      return;
    }
    lastAt = Date.now();
    outcome.seen += 1;
    outcome.delays.push(lastAt - message.event.at);
    outcome.bytes.push(packed(message).length);
  });
  const phones = fork(fileURLToPath(new URL("phones.ts", import.meta.url)), {
    execArgv: ["--import", "tsx"],
  });
  const tell = (message: ToPhones) => phones.send(message);
  const invitations = await Promise.all(
    seats.map((seat) => local.invite(seat, Date.now() + 2 * HOUR_MS)),
  );
  tell({ do: "join", invitations, ms: minutes * 60_000 });
  await until(() => introduced === count);
  const looking = setInterval(() => {
    const before = performance.now();
    picture.view(Date.now());
    outcome.views.push(performance.now() - before);
  }, LOOK_MS);
  const before = counting.bytes;
  const begun = newsOf(phones);
  const ended = once(phones, "exit");
  tell({ do: "play", speed });
  const { at, entries } = await begun;
  await ended;
  await until(() => outcome.seen >= entries);
  clearInterval(looking);
  Object.assign(outcome, { entries, seconds: (lastAt - at) / 1000 });
  outcome.readBytes = (counting.bytes - before) / outcome.seen;
  reader.stop();
  outcome.storedBytes = await storedBytes(local);
  await local.close();
  return outcome;
}

const newsOf = async (phones: ChildProcess): Promise<Begun> =>
  ((await once(phones, "message")) as [Begun])[0];

/** Gives up after a minute: what is missing then is told as missing. */
async function until(isSo: () => boolean): Promise<void> {
  for (let waited = 0; !isSo() && waited < 60_000; waited += 20) await pause(20);
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

/** A dash for what was too short to be measured. */
const ms = (value: number): string =>
  Number.isNaN(value) ? "–" : value.toFixed(value < 10 ? 1 : 0);

function rowOf(name: string, outcome: Outcome): Row {
  const { entries, seen, seconds, delays, bytes, storedBytes, readBytes, views } = outcome;
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
    ms(readBytes),
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
  "to each who looks on",
  "working out the board, middle (99 in 100) (ms)",
];

const load = () => (loadavg()[0] ?? Number.NaN).toFixed(1);
console.log(
  `npm run bench:board -- --phones ${count} --minutes ${minutes} --speed ${speed}; Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model}, ${new Date().toISOString().slice(0, 10)}\n`,
);
const before = load();
const paced = await run(speed);
const atOnce = await run("at-once");
console.log(
  table(HEAD, [
    rowOf(speed === 1 ? "at their own pace" : `${speed} times as fast`, paced),
    rowOf("all at once", atOnce),
  ]),
);
console.log(`\nLoad of the machine ${before} before, ${load()} after.`);

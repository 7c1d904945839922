import type { ChildProcess } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { jetstream, jetstreamManager } from "@nats-io/jetstream";
import type { NatsConnection } from "@nats-io/nats-core";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { connectTo } from "../../src/board/connection.ts";
import { streamOf, subjectFor } from "../../src/board/subjects.ts";
import { configuration, streamConfig } from "../tools/board/configuration.ts";
import { type Credential, Issuer } from "../tools/board/credentials.ts";
import {
  credentialsFile,
  hubConfiguration,
  lakeConfiguration,
  mirrorConfig,
} from "../tools/board/lake.ts";
import { runNatsServer } from "../tools/board/nats-server.ts";
import { nodeSocket } from "../tools/board/node-socket.ts";
import { endServer } from "./end-server.ts";
import { freePort } from "./free-port.ts";

const MOST_BYTES = 8 * 1024 * 1024;
const IN_AN_HOUR = Date.now() + 3_600_000;

let folder: string;
let issuer: Issuer;
let keeper: Credential;
let ports: { hub: number; line: number; lake: number };
let servers: Record<"hub" | "lake", ChildProcess>;
const connections: NatsConnection[] = [];

const fileOf = (name: "hub" | "lake") => join(folder, `${name}.conf`);

/** Both servers under one trust, with the stream at the lake and its mirror at the hub. */
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "pegscribe-lake-"));
  issuer = await Issuer.open(4 * MOST_BYTES);
  keeper = await issuer.keeper();
  ports = { hub: await freePort(), line: await freePort(), lake: await freePort() };
  const credentials = join(folder, "line.creds");
  writeFileSync(credentials, credentialsFile(keeper), { mode: 0o600 });
  const plain = (name: "hub" | "lake") =>
    configuration(issuer.trust, {
      ...{ host: "127.0.0.1", port: ports[name], mostBytes: 4 * MOST_BYTES },
      storeFolder: join(folder, name),
    });
  const line = { url: `nats-leaf://127.0.0.1:${ports.line}`, credentials };
  writeFileSync(fileOf("hub"), hubConfiguration(plain("hub"), ports.line));
  writeFileSync(
    fileOf("lake"),
    lakeConfiguration(plain("lake"), { ...line, account: issuer.trust.account.key }),
  );
  const hub = await runNatsServer(fileOf("hub"));
  servers = { hub, lake: await runNatsServer(fileOf("lake")) };
  const atLake = await jetstreamManager(await open("lake"));
  await atLake.streams.add(streamConfig("osier", MOST_BYTES));
  const atHub = await jetstreamManager(await open("hub"));
  await atHub.streams.add(mirrorConfig("osier", MOST_BYTES));
});

afterAll(async () => {
  await Promise.all(connections.map((one) => one.close()));
  await Promise.all(Object.values(servers).map(endServer));
  rmSync(folder, { recursive: true, force: true });
});

async function open(
  at: "hub" | "lake",
  as: Credential & { seat: string } = { ...keeper, seat: "k" },
) {
  const connection = await connectTo({ ...as, address: `ws://127.0.0.1:${ports[at]}` }, nodeSocket);
  connections.push(connection);
  return connection;
}

/** The messages that a seat reads at the hub, by place and text. */
async function readAtHub(): Promise<string[]> {
  const seat = await issuer.seat({ address: "", board: "osier", seat: "peg-2" }, IN_AN_HOUR);
  const connection = await open("hub", seat);
  const consumer = await jetstream(connection).consumers.get(streamOf("osier"), {
    opt_start_seq: 1,
  });
  const { num_pending: count } = await consumer.info();
  if (count === 0) return [];
  const read: string[] = [];
  for await (const message of await consumer.fetch({ max_messages: count, expires: 5000 }))
    read.push(`${message.seq} ${message.string()}`);
  return read;
}

test("a lake goes on while the line to the hub is down, and the hub has it all once it is back", async () => {
  const seat = await issuer.seat({ address: "", board: "osier", seat: "peg-1" }, IN_AN_HOUR);
  const subject = subjectFor(seat, "a-session");
  const say = async (at: NatsConnection, text: string) =>
    jetstream(at).publish(subject, new TextEncoder().encode(text), { msgID: text });
  const phone = await open("lake", seat);
  await say(phone, "one");
  await vi.waitFor(async () => expect(await readAtHub()).toEqual(["1 one"]), 30_000);

  await endServer(servers.hub);
  for (const text of ["two", "three"])
    expect(await say(phone, text)).toMatchObject({ domain: "lake", duplicate: false });
  servers.hub = await runNatsServer(fileOf("hub"));
  await vi.waitFor(async () => expect(await readAtHub()).toEqual(["1 one", "2 two", "3 three"]), {
    timeout: 50_000,
    interval: 1000,
  });
});

test("what is said at the hub goes to the lake, and comes back from there", async () => {
  const seat = await issuer.seat({ address: "", board: "osier", seat: "peg-3" }, IN_AN_HOUR);
  const phone = await open("hub", seat);
  const taken = await jetstream(phone).publish(subjectFor(seat, "a-session"), "four", {
    msgID: "four",
  });
  expect(taken.domain).toBe("lake");
  await vi.waitFor(
    async () => expect((await readAtHub()).at(-1)).toBe(`${taken.seq} four`),
    30_000,
  );
});

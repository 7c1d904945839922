import type { ChildProcess } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type JetStreamManager, jetstream, jetstreamManager } from "@nats-io/jetstream";
import type { NatsConnection } from "@nats-io/nats-core";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { connectTo } from "../../src/board/connection.ts";
import type { Invitation } from "../../src/board/invitation.ts";
import { streamOf, subjectFor } from "../../src/board/subjects.ts";
import { clusterConfiguration, replicated } from "../tools/board/cluster.ts";
import { configuration } from "../tools/board/configuration.ts";
import { Issuer } from "../tools/board/credentials.ts";
import { runNatsServer } from "../tools/board/nats-server.ts";
import { nodeSocket } from "../tools/board/node-socket.ts";
import { endServer } from "./end-server.ts";
import { freePort } from "./free-port.ts";

const MOST_BYTES = 8 * 1024 * 1024;
/** An account's room is counted on each of the three. */
const ROOM_BYTES = 3 * 4 * MOST_BYTES;
const NAMES = ["north", "east", "south"];

let folder: string;
let issuer: Issuer;
let keeper: NatsConnection;
let manager: JetStreamManager;
const servers = new Map<string, { process: ChildProcess; address: string }>();

const soon = { timeout: 60_000, interval: 250 };

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "pegscribe-cluster-"));
  issuer = await Issuer.open(ROOM_BYTES);
  const members = await Promise.all(
    NAMES.map(async (name) => ({ name, host: "127.0.0.1", port: await freePort() })),
  );
  for (const member of members) {
    const { name } = member;
    const place = { host: "127.0.0.1", port: await freePort(), mostBytes: ROOM_BYTES };
    const plain = configuration(issuer.trust, { ...place, storeFolder: join(folder, name) });
    const file = join(folder, `${name}.conf`);
    writeFileSync(file, clusterConfiguration(plain, member, members), { mode: 0o600 });
    const address = `ws://127.0.0.1:${place.port}`;
    servers.set(name, { process: await runNatsServer(file), address });
  }
  const { address } = servers.get("north") as { address: string };
  keeper = await connectTo({ ...(await issuer.keeper()), address, seat: "keeper" }, nodeSocket);
  manager = await jetstreamManager(keeper, { checkAPI: false });
  // Until they have agreed on who leads, nobody answers.
  await vi.waitFor(() => manager.streams.add(replicated("osier", MOST_BYTES)), soon);
}, 90_000);

afterAll(async () => {
  await keeper?.close();
  await Promise.all([...servers.values()].map(({ process }) => endServer(process)));
  rmSync(folder, { recursive: true, force: true });
});

const inviteAt = (name: string, seat: string) => {
  const { address } = servers.get(name) as { address: string };
  return issuer.seat({ address, board: "osier", seat }, Date.now() + 3_600_000);
};

/** Says it again and again until it is taken, as a phone does, but less patiently. */
async function say(at: NatsConnection, invitation: Invitation, ids: readonly string[]) {
  for (const id of ids) {
    const publish = () =>
      jetstream(at).publish(subjectFor(invitation, "a-session"), id, { msgID: id, timeout: 2000 });
    await vi.waitFor(publish, soon);
  }
}

/** Everything on the board, read anew, in its order. */
async function readAt(name: string): Promise<string[]> {
  const seat = await inviteAt(name, "peg-2");
  const connection = await connectTo(seat, nodeSocket);
  const consumer = await jetstream(connection).consumers.get(streamOf("osier"), {
    opt_start_seq: 1,
  });
  const { num_pending: count } = await consumer.info();
  const read: string[] = [];
  for await (const message of await consumer.fetch({ max_messages: count, expires: 5000 }))
    read.push(message.string());
  await connection.close();
  return read;
}

test("of three servers the one that leads dies in the middle: nothing is lost, nothing doubled", async () => {
  const { cluster } = await manager.streams.info(streamOf("osier"));
  const leader = cluster?.leader ?? "";
  const [stays = "", other = ""] = NAMES.filter((name) => name !== leader);
  expect((cluster?.replicas ?? []).map(({ name }) => name).sort()).toEqual([stays, other].sort());
  const invitation = await inviteAt(stays, "peg-1");
  const phone = await connectTo(invitation, nodeSocket);
  const ids = Array.from({ length: 30 }, (_, n) => `entry-${n}`);
  await say(phone, invitation, ids.slice(0, 15));
  const goingOn = say(phone, invitation, ids.slice(15));
  await endServer((servers.get(leader) as { process: ChildProcess }).process);
  await goingOn;
  await vi.waitFor(async () => expect(await readAt(other)).toEqual(ids), soon);
  await phone.close();
}, 120_000);

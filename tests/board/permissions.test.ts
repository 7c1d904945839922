/** What a server with the generated configuration lets a seat do, asked of the server itself. */
import { jetstream, jetstreamManager } from "@nats-io/jetstream";
import { expect, test } from "vitest";
import { connectTo } from "../../src/board/connection.ts";
import type { Invitation } from "../../src/board/invitation.ts";
import { MOST_BYTES } from "../../src/board/message.ts";
import { inboxOf, streamOf, subjectFor } from "../../src/board/subjects.ts";
import { nodeSocket } from "../tools/board/node-socket.ts";
import { boardOfFile } from "./board-of-file.ts";
import { LocalBoard, MINUTE_MS } from "./local-board.ts";
import { opened } from "./opened.ts";

const local = boardOfFile();

const connect = async (invitation: Invitation) => opened(await connectTo(invitation, nodeSocket));

const stream = streamOf("osier");
const someBytes = new Uint8Array([1]);

async function stored(): Promise<number> {
  const manager = await jetstreamManager(await connect(await local.invite("peg-9")), {
    checkAPI: false,
  });
  return (await manager.streams.info(stream)).state.messages;
}

test("a seat writes to its own subject, and the board keeps it once", async () => {
  const invitation = await local.invite("peg-1");
  const writer = jetstream(await connect(invitation));
  const before = await stored();
  await writer.publish(subjectFor(invitation, "a-session"), someBytes, { msgID: "one" });
  const again = await writer.publish(subjectFor(invitation, "a-session"), someBytes, {
    msgID: "one",
  });
  expect(again.duplicate).toBe(true);
  expect(await stored()).toBe(before + 1);
});

test.each([
  ["another seat's subject", "pegscribe.osier.a-session.peg-2"],
  ["another board's", "pegscribe.marram.a-session.peg-1"],
  ["a subject of none", "greetings"],
  ["another seat's answers", `${inboxOf("peg-2")}.1`],
  ["the removal of the stream", `$JS.API.STREAM.DELETE.${stream}`],
  ["its emptying", `$JS.API.STREAM.PURGE.${stream}`],
  ["another configuration of it", `$JS.API.STREAM.UPDATE.${stream}`],
  ["the removal of one message", `$JS.API.STREAM.MSG.DELETE.${stream}`],
  ["a stream of its own", "$JS.API.STREAM.CREATE.mine"],
])("the server refuses %s", async (_, subject) => {
  const connection = await connect(await local.invite("peg-1"));
  const before = await stored();
  const refused = connection.request(subject, someBytes, { timeout: 2000 });
  await expect(refused).rejects.toThrow(/Permissions Violation for Publish/);
  expect(await stored()).toBe(before);
});

test.each([
  ["all that is said", "pegscribe.>"],
  ["another seat's answers", `${inboxOf("peg-2")}.>`],
])("the server lets no seat listen to %s", async (_, subject) => {
  const connection = await connect(await local.invite("peg-1"));
  const said = await new Promise<Error | null>((told) => {
    connection.subscribe(subject, { callback: told });
  });
  expect(said?.message).toMatch(/Permissions Violation for Subscription/);
});

test("a seat can't have the board say again what another said, under another's name", async () => {
  const connection = await connect(await local.invite("peg-1"));
  const manager = await jetstreamManager(connection, { checkAPI: false });
  const consumer = {
    name: "forger",
    deliver_subject: "pegscribe.osier.a-session.peg-2",
    ack_policy: "none",
  } as const;
  await expect(manager.consumers.add(stream, consumer)).rejects.toThrow(/cycle/);
});

test("a seat of one board can't read another", async () => {
  const other = await LocalBoard.open("marram");
  try {
    const itsOwn = await other.invite("peg-1");
    const address = local.board.localAddress;
    await expect(connect({ ...itsOwn, address })).rejects.toThrow(/Authorization Violation/);
    const manager = await jetstreamManager(await connect(itsOwn), { checkAPI: false });
    await expect(manager.streams.info(stream)).rejects.toThrow(/Permissions Violation/);
  } finally {
    await other.close();
  }
});

test("a credential of one's own making opens nothing", async () => {
  const [mine, other] = [await local.invite("peg-1"), await local.invite("peg-2")];
  await expect(connect({ ...mine, seed: other.seed })).rejects.toThrow(/Authorization Violation/);
});

test("a credential ends at its time, without a word to the server", async () => {
  const over = await local.invite("peg-1", Date.now() - MINUTE_MS);
  await expect(connect(over)).rejects.toThrow(/Authorization Violation/);
  const soonOver = await connect(await local.invite("peg-1", Date.now() + 2500));
  expect((await soonOver.closed())?.message).toMatch(/expired/i);
});

test("the board takes no message that is too large", async () => {
  const invitation = await local.invite("peg-1");
  const writer = jetstream(await connect(invitation));
  const subject = subjectFor(invitation, "a-session");
  await writer.publish(subject, new Uint8Array(MOST_BYTES - 500));
  await expect(writer.publish(subject, new Uint8Array(MOST_BYTES + 1))).rejects.toThrow(/exceeds/);
  await expect(writer.publish(subject, new Uint8Array(2 * MOST_BYTES))).rejects.toThrow(/size/);
});

test("a full board refuses what is new, and keeps what is there", async () => {
  const small = await LocalBoard.open("osier", 256 * 1024);
  try {
    const invitation = await small.invite("peg-1");
    const writer = jetstream(await connect(invitation));
    const fill = async () => {
      for (let n = 0; n < 10; n++) {
        await writer.publish(subjectFor(invitation, "a-session"), new Uint8Array(50_000));
      }
    };
    await expect(fill()).rejects.toThrow(/maximum bytes/);
    const manager = await jetstreamManager(await connect(invitation), { checkAPI: false });
    const { state } = await manager.streams.info(stream);
    expect([state.first_seq, state.messages]).toEqual([1, 5]);
  } finally {
    await small.close();
  }
});

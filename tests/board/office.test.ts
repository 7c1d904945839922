/** What the board's worker does for the page, with a real server. */
import { expect, test, vi } from "vitest";
import { connectTo } from "../../src/board/connection.ts";
import { Office } from "../../src/board/office.ts";
import type { FromBoard } from "../../src/board/talk.ts";
import { nodeSocket } from "../tools/board/node-socket.ts";
import { allSent } from "./all-sent.ts";
import { boardOfFile } from "./board-of-file.ts";
import { opened } from "./opened.ts";
import { Phone } from "./phone.ts";

const local = boardOfFile();

const within = { timeout: 15_000, interval: 20 };

async function officeOf(phone: Phone, seat: string, address = local.board.localAddress) {
  const joined = await phone.join({ ...(await local.invite(seat)), address });
  const told: FromBoard[] = [];
  const office = opened(
    new Office({
      ...{ outbox: phone.outbox, joined },
      tell: (message) => told.push(message),
      connect: (invitation) => connectTo(invitation, nodeSocket),
    }),
  );
  return { office, told };
}

test("tells how many still wait, down to none", async () => {
  const phone = new Phone();
  await phone.logFish(20);
  const { told } = await officeOf(phone, "peg-1");
  await vi.waitFor(
    () => expect(told.at(-1)).toEqual({ is: "sending", waiting: 0, tooLarge: 0 }),
    within,
  );
  expect(told[0]).toEqual({ is: "sending", waiting: 20, tooLarge: 0 });
});

test("counts what is logged while the board is out of reach", async () => {
  const phone = new Phone();
  const { office, told } = await officeOf(phone, "peg-2", "ws://127.0.0.1:9");
  const last = (waiting: number) => ({
    ...{ is: "sending", waiting, tooLarge: 0, trouble: "out-of-reach" },
  });
  // The next try, which would count too, is two seconds off then.
  await vi.waitFor(() => expect(told.length).toBe(3), within);
  expect(told.at(-1)).toEqual(last(0));
  await phone.logFish(2);
  office.look();
  await vi.waitFor(() => expect(told.at(-1)).toEqual(last(2)), { ...within, timeout: 1000 });
});

test("a seat that only watches sends nothing, keeps nothing waiting, and reads", async () => {
  const phone = new Phone();
  const sends = opened(new Phone());
  sends.open(await sends.join(await local.invite("peg-3")));
  await sends.logFish(1);
  await phone.logFish(3);
  const { office, told } = await officeOf(phone, "watch-1");
  await allSent(phone, within);
  await phone.logFish(1);
  office.look();
  await allSent(phone, within);
  office.follow();
  await vi.waitFor(() => expect(told.at(-1)?.is).toBe("news"), within);
  expect(JSON.stringify(told)).toContain("Angler peg-3");
  expect(JSON.stringify(told)).not.toContain("Angler watch-1");
  expect(told.some(({ is }) => is === "sending")).toBe(false);
});

test("no more is told of the board once nobody looks", async () => {
  const phone = new Phone();
  const { office, told } = await officeOf(phone, "peg-4");
  office.follow();
  await vi.waitFor(() => expect(told.some(({ is }) => is === "news")).toBe(true), within);
  office.unfollow();
  const news = () => told.filter(({ is }) => is === "news").length;
  const before = news();
  await phone.logFish(3);
  office.look();
  await allSent(phone, within);
  await new Promise((done) => setTimeout(done, 1500));
  expect(news()).toBe(before);
});

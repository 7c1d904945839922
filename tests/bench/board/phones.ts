/**
 * Many phones in a process of their own, so that they share no processor with who looks at the
 * board. Told what to play, they join; told to go on, they play it.
 */
import type { Invitation } from "../../../src/board/invitation.ts";
import { Phone } from "../../board/phone.ts";
import { busyAngler, type Said } from "./pace.ts";

export type ToPhones =
  /** @property ms as it was fished */
  | { do: "join"; invitations: readonly Invitation[]; ms: number }
  /** So many times faster than it was fished, or all of it at once. */
  | { do: "play"; speed: number | "at-once" };

/** The time from which it was played, and how many entries there are. */
export interface Begun {
  at: number;
  entries: number;
}

const LOOK_MS = 20;
/** One after the other: in truth two hundred phones have two hundred processors to sign with. */
const JOIN_EVERY_MS = 100;

const pause = (ms: number) => new Promise((done) => setTimeout(done, ms));

const told: ToPhones[] = [];
let heed = () => {};
process.on("message", (message: ToPhones) => {
  told.push(message);
  heed();
});

async function next<T extends ToPhones["do"]>(what: T): Promise<Extract<ToPhones, { do: T }>> {
  for (;;) {
    const found = told.find((one): one is Extract<ToPhones, { do: T }> => one.do === what);
    if (found) return found;
    await new Promise<void>((done) => {
      heed = done;
    });
  }
}

async function play(phone: Phone, said: readonly Said[], speed: number | "at-once", begun: number) {
  for (const { at, statement } of said) {
    if (speed !== "at-once") await pause(at / speed - (performance.now() - begun));
    await phone.log({ kind: "entry", statement });
  }
}

async function anyWaits(phones: readonly Phone[]): Promise<boolean> {
  for (const phone of phones) if ((await phone.outbox.count()) > 0) return true;
  return false;
}

const { invitations, ms } = await next("join");
const phones: Phone[] = [];
for (const invitation of invitations) {
  const phone = new Phone();
  phone.open(await phone.join(invitation));
  phones.push(phone);
  await pause(JOIN_EVERY_MS);
}
const days = phones.map((_, n) => busyAngler(n + 1, ms));
const { speed } = await next("play");
const entries = days.reduce((all, { length }) => all + length, 0);
process.send?.({ at: Date.now(), entries } satisfies Begun);
const troubles = () => phones.reduce((all, phone) => all + phone.troubles.length, 0);
const before = troubles();
const begun = performance.now();
await Promise.all(phones.map((phone, n) => play(phone, days[n] ?? [], speed, begun)));
while (await anyWaits(phones)) await pause(LOOK_MS);
const lost = troubles() - before;
for (const phone of phones) phone.close();
if (lost > 0) console.error(`Phones lost the board ${lost} times.`);
process.disconnect();

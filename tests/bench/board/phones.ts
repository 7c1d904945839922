/**
 * Many phones in a process of their own, as they share no processor with who looks at the board. It
 * is told what to do and says when it is done.
 */
import type { Invitation } from "../../../src/board/invitation.ts";
import { Phone } from "../../board/phone.ts";
import { busyAngler } from "./pace.ts";

export interface Play {
  invitations: readonly Invitation[];
  /** As it was fished. */
  ms: number;
  /** How many times faster than that it goes. */
  speed: number;
  /** All of it is logged before there is a network. */
  isLate: boolean;
}

/** `begun` has the time from which delays count, `sent` follows once no outbox holds anything. */
export type FromPhones = { is: "begun"; at: number; entries: number } | { is: "sent"; at: number };

const LOOK_MS = 20;

const pause = (ms: number) => new Promise((done) => setTimeout(done, ms));
const tell = (news: FromPhones) => process.send?.(news);

async function play({ invitations, ms, speed, isLate }: Play): Promise<void> {
  const phones = await Promise.all(
    invitations.map(async (invitation, seed) => {
      const phone = new Phone();
      return { phone, joined: await phone.join(invitation), said: busyAngler(seed + 1, ms) };
    }),
  );
  const entries = phones.reduce((all, { said }) => all + said.length, 0);
  const open = () => {
    for (const { phone, joined } of phones) phone.open(joined);
  };
  const log = (phone: Phone, of: (typeof phones)[number]["said"][number]) =>
    phone.log({ kind: "entry", statement: of.statement });
  if (isLate) {
    for (const { phone, said } of phones) for (const one of said) await log(phone, one);
    tell({ is: "begun", at: Date.now(), entries });
    open();
  } else {
    open();
    // All have said who they are before the first word.
    await pause(5000);
    tell({ is: "begun", at: Date.now(), entries });
    const begun = performance.now();
    await Promise.all(
      phones.map(async ({ phone, said }) => {
        for (const one of said) {
          await pause(one.at / speed - (performance.now() - begun));
          await log(phone, one);
        }
      }),
    );
  }
  while (await anyWaits(phones.map(({ phone }) => phone))) await pause(LOOK_MS);
  tell({ is: "sent", at: Date.now() });
  for (const { phone } of phones) phone.close();
  process.disconnect();
}

async function anyWaits(phones: readonly Phone[]): Promise<boolean> {
  for (const phone of phones) if ((await phone.outbox.count()) > 0) return true;
  return false;
}

process.once("message", (message: Play) => void play(message));

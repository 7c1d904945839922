/** A board for the screens whose reading the test plays. */
import { type Signal, signal } from "@preact/signals";
import type { Board, Membership, Reading, Sending } from "../../src/screens/app/board.ts";

export interface FakeBoard extends Board {
  membership: Signal<Membership | undefined>;
  sending: Signal<Sending>;
  reading: Signal<Reading>;
  /** How many are reading it at the moment. */
  readers: Signal<number>;
}

export const MEMBERSHIP: Membership = {
  invitation: {
    ...{ address: "ws://127.0.0.1:9222", board: "osier", seat: "peg-1" },
    ...{ jwt: "a.b.c", seed: `SU${"A".repeat(56)}` },
  },
  standing: { name: "Ada", peg: "12" },
  shares: { notes: false, heard: false },
};

export function fakeBoard(): FakeBoard {
  const [membership, readers] = [signal<Membership | undefined>(MEMBERSHIP), signal(0)];
  const sending = signal<Sending>({ is: "going", waiting: 0, tooLarge: 0 });
  const reading = signal<Reading>({ is: "off" });
  return {
    ...{ membership, sending, reading, readers },
    follow() {
      readers.value += 1;
      return () => {
        readers.value -= 1;
      };
    },
    join: async (joined) => {
      membership.value = joined;
    },
    leave: async () => {
      membership.value = undefined;
    },
  };
}

import { type Signal, signal } from "@preact/signals";
import type { Membership } from "../../board/membership.ts";
import type { Desks } from "../desks.ts";
import type { Reading, Sending } from "./news.ts";

/** What is shown of a shared board, from the first moment on. */
export interface BoardSignals {
  membership: Signal<Membership | undefined>;
  sending: Signal<Sending>;
  reading: Signal<Reading>;
}

/** The shared board, fetched once the first screen is there; a phone that is on none needs no more. */
export function laterBoard(desks: Desks) {
  const shown: BoardSignals = {
    membership: signal(),
    sending: signal<Sending>({ is: "off" }),
    reading: signal<Reading>({ is: "off" }),
  };
  let made: Promise<import("./shared-board.ts").SharedBoard> | undefined;
  const board = () => {
    made ??= import("./make-board.ts").then(
      ({ makeBoard }) => makeBoard(desks, shown),
      (cause) => {
        made = undefined;
        throw cause;
      },
    );
    return made;
  };
  return {
    ...shown,
    /** Goes on with the board that this phone is on, if it is on one. */
    goOn: async () => {
      // The log goes first: it is copied before it is brought up to date.
      await desks.own.store.lastWritten();
      await (await board()).goOn();
    },
    follow(): () => void {
      const following = board().then((one) => one.follow());
      following.catch(() => {});
      return () => void following.then((end) => end()).catch(() => {});
    },
    join: async (membership: Membership) => (await board()).join(membership),
    leave: async () => (await board()).leave(),
  };
}

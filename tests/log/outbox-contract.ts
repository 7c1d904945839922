/** What every outbox must do, as plain checks that run in Node and in a page alike. */
import type { Outbox } from "../../src/log/outbox.ts";
import type { LogStore } from "../../src/log/store.ts";
import { assertEqual, draft, event } from "./store-contract.ts";

export interface OutboxCheck {
  name: string;
  run(store: LogStore, outbox: Outbox): Promise<void>;
}

const waitingIds = async (outbox: Outbox) =>
  (await outbox.waiting(100)).map((one) => one.event?.id ?? "gone");

export const OUTBOX_CONTRACT: readonly OutboxCheck[] = [
  {
    name: "takes nothing in before a board is joined, nor after it is left",
    async run(store, outbox) {
      await store.append([draft()]);
      assertEqual([await outbox.joined(), await outbox.count()], [undefined, 0], "before");
      await outbox.join({ board: "b" }, "empty");
      assertEqual(await outbox.joined(), { board: "b" }, "joined");
      await store.append([draft()]);
      assertEqual(await outbox.count(), 1, "on the board");
      await outbox.leave();
      assertEqual([await outbox.joined(), await outbox.count()], [undefined, 0], "left");
      await store.append([draft()]);
      assertEqual(await outbox.count(), 0, "afterwards");
    },
  },
  {
    name: "keeps what was there on joining and what is appended, in order and once",
    async run(store, outbox) {
      const [before] = await store.append([draft()]);
      await store.append([draft("another")]);
      await outbox.join({}, "s");
      const drafts = [draft(), draft()];
      await store.append(drafts);
      await store.append(drafts);
      await store.put([event("from-elsewhere", "s", 7)]);
      assertEqual(await waitingIds(outbox), [before?.id, ...drafts.map(({ id }) => id)], "waiting");
    },
  },
  {
    name: "keeps what was written here while nothing could be stored",
    async run(store, outbox) {
      await outbox.join({}, "empty");
      await store.putOwn([event("late", "s", 7)]);
      await store.putOwn([event("late", "s", 7)]);
      assertEqual(await waitingIds(outbox), ["late"], "waiting");
    },
  },
  {
    name: "gives up what the board has, and only that",
    async run(store, outbox) {
      await outbox.join({}, "empty");
      const drafts = [draft(), draft(), draft()];
      await store.append(drafts);
      const [first, second] = await outbox.waiting(2);
      await outbox.done([first?.place ?? 0, second?.place ?? 0]);
      assertEqual(await waitingIds(outbox), [drafts[2]?.id], "left over");
      await outbox.done([first?.place ?? 0]);
      assertEqual(await outbox.count(), 1, "done twice");
    },
  },
  {
    name: "forgets on joining what waited for another board",
    async run(store, outbox) {
      await outbox.join({ board: "b" }, "empty");
      await store.append([draft()]);
      await outbox.join({ board: "c" }, "empty");
      assertEqual([await outbox.joined(), await outbox.count()], [{ board: "c" }, 0], "joined");
    },
  },
  {
    name: "says which event was taken out of the log since",
    async run(store, outbox) {
      await outbox.join({}, "empty");
      await store.append([draft("kept"), draft("taken-out")]);
      await store.remove("taken-out");
      assertEqual((await waitingIds(outbox))[1], "gone", "second");
    },
  },
];

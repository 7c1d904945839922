import type { IDBPObjectStore, StoreNames } from "idb";
import * as v from "valibot";
import { eventSchema, type LogEvent } from "./event.ts";
import { Connection } from "./idb-connection.ts";
import type { LogSchema } from "./idb-schema.ts";
import { write } from "./idb-write.ts";
import type { Outbox, Waiting } from "./outbox.ts";

/** The one key of the `joined` store. */
export const THIS_BOARD = "this";

type Store<Name extends "joined" | "outbox"> = IDBPObjectStore<
  LogSchema,
  StoreNames<LogSchema>[],
  Name,
  "readwrite"
>;

/** In the transaction that adds the events, so that none of them is ever forgotten. */
export async function putOut(
  joined: Store<"joined">,
  outbox: Store<"outbox">,
  events: readonly LogEvent[],
): Promise<void> {
  if ((await joined.count()) === 0) return;
  for (const { id } of events) await outbox.add({ event: id });
}

/** The outbox that `IdbStore` fills, through a connection of its own. */
export class IdbOutbox implements Outbox {
  readonly #connection: Connection;

  /** @param name the log's database */
  constructor(name: string) {
    this.#connection = new Connection(name);
  }

  join(membership: unknown, session: string): Promise<void> {
    return this.#connection.run((db) =>
      write(db, ["events", "joined", "outbox"], async (tx) => {
        await tx.objectStore("joined").put(membership, THIS_BOARD);
        await tx.objectStore("outbox").clear();
        // Ids sort by the time they were made.
        const events = await tx.objectStore("events").index("session").getAllKeys(session);
        for (const event of events) await tx.objectStore("outbox").add({ event });
      }),
    );
  }

  joined(): Promise<unknown> {
    return this.#connection.run((db) => db.get("joined", THIS_BOARD));
  }

  waiting(most: number): Promise<Waiting[]> {
    return this.#connection.run(async (db) => {
      const tx = db.transaction(["outbox", "events"]);
      const places = await tx.objectStore("outbox").getAllKeys(null, most);
      const records = await tx.objectStore("outbox").getAll(null, most);
      const events = await Promise.all(
        records.map(({ event }) => tx.objectStore("events").get(event)),
      );
      return places.map((place, n) => {
        const read = v.safeParse(eventSchema, events[n]);
        return read.success ? { place, event: read.output } : { place };
      });
    });
  }

  count(): Promise<number> {
    return this.#connection.run((db) => db.count("outbox"));
  }

  done(places: readonly number[]): Promise<void> {
    return this.#connection.run((db) =>
      write(db, ["outbox"], async (tx) => {
        for (const place of places) await tx.objectStore("outbox").delete(place);
      }),
    );
  }

  leave(): Promise<void> {
    return this.#connection.run((db) =>
      write(db, ["joined", "outbox"], async (tx) => {
        await tx.objectStore("joined").clear();
        await tx.objectStore("outbox").clear();
      }),
    );
  }

  close(): void {
    this.#connection.close();
  }
}

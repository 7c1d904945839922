/** The database as version 3 of the log left it: with digests and what was taken out beside. */
import { finished, V1_DEVICE, V1_EVENTS } from "./store-v1.ts";

/**
 * Makes the database and leaves it closed.
 * @param withOutbox as builds of version 3 made it that already had the outbox
 */
export async function makeV3(name: string, withOutbox: boolean): Promise<void> {
  const opening = indexedDB.open(name, 3);
  opening.onupgradeneeded = () => {
    const db = opening.result;
    const events = db.createObjectStore("events", { keyPath: "id" });
    events.createIndex("session", "session");
    events.createIndex("times", ["session", "at"]);
    db.createObjectStore("device").put(V1_DEVICE, "this");
    db.createObjectStore("damaged", { autoIncrement: true });
    db.createObjectStore("removed", { keyPath: "session" }).put({ session: "friday" });
    const digests = db.createObjectStore("digests", { keyPath: "session" });
    if (withOutbox) {
      db.createObjectStore("outbox", { autoIncrement: true });
      db.createObjectStore("joined");
    }
    for (const event of V1_EVENTS) {
      events.put(event);
      digests.put({ session: event.session });
    }
  };
  const db = await finished(opening);
  db.close();
}

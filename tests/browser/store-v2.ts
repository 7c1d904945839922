/** The database as version 2 of the log left it: that of version 1, with the times beside. */
import { finished, V1_DEVICE, V1_EVENTS } from "./store-v1.ts";

/** Makes the database and leaves it closed. */
export async function makeV2(name: string, extra: readonly unknown[] = []): Promise<void> {
  const opening = indexedDB.open(name, 2);
  opening.onupgradeneeded = () => {
    const events = opening.result.createObjectStore("events", { keyPath: "id" });
    events.createIndex("session", "session");
    events.createIndex("times", ["session", "at"]);
    opening.result.createObjectStore("device").put(V1_DEVICE, "this");
    opening.result.createObjectStore("damaged", { autoIncrement: true });
    for (const event of [...V1_EVENTS, ...extra]) events.put(event);
  };
  const db = await finished(opening);
  db.close();
}

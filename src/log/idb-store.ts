import type { SteadyClock } from "./clock.ts";
import { newDevice, stampNext } from "./device.ts";
import type { EventDraft, LogEvent } from "./event.ts";
import { Connection } from "./idb-connection.ts";
import { sound } from "./idb-damage.ts";
import { THIS_DEVICE } from "./idb-schema.ts";
import { spans } from "./idb-spans.ts";
import { write } from "./idb-write.ts";
import type { DamagedRecord, EventListener, LogStore, SessionSpan } from "./store.ts";
import { TabChannel } from "./tab-channel.ts";

/** The log in IndexedDB. Any number of tabs may write: the browser lets one transaction in at a time. */
export class IdbStore implements LogStore {
  readonly #clock: SteadyClock;
  readonly #connection: Connection;
  readonly #tabs: TabChannel;
  readonly #listeners = new Set<EventListener>();

  /** @param name the database's name, the same in all tabs */
  constructor(name: string, clock: SteadyClock) {
    this.#clock = clock;
    this.#connection = new Connection(name);
    this.#tabs = new TabChannel(name, (events) => this.#tell(events));
  }

  async append(drafts: readonly EventDraft[]): Promise<LogEvent[]> {
    const { events, fresh } = await this.#connection.run((db) =>
      write(db, ["events", "device"], async (tx) => {
        const stored = tx.objectStore("events");
        let device = (await tx.objectStore("device").get(THIS_DEVICE)) ?? newDevice();
        const events: LogEvent[] = [];
        const fresh: LogEvent[] = [];
        for (const draft of drafts) {
          const known = await stored.get(draft.id);
          if (known) {
            events.push(known);
            continue;
          }
          const next = stampNext(device, draft, this.#clock);
          device = next.device;
          await stored.add(next.event);
          events.push(next.event);
          fresh.push(next.event);
        }
        await tx.objectStore("device").put(device, THIS_DEVICE);
        return { events, fresh };
      }),
    );
    this.#announce(fresh);
    return events;
  }

  async put(events: readonly LogEvent[]): Promise<LogEvent[]> {
    const fresh = await this.#connection.run((db) =>
      write(db, ["events"], async (tx) => {
        const stored = tx.objectStore("events");
        const fresh: LogEvent[] = [];
        for (const event of events) {
          if ((await stored.getKey(event.id)) !== undefined) continue;
          await stored.add(event);
          fresh.push(event);
        }
        return fresh;
      }),
    );
    this.#announce(fresh);
    return fresh;
  }

  session(id: string): Promise<LogEvent[]> {
    return this.#connection.run(async (db) =>
      sound(db, await db.getAllFromIndex("events", "session", id)),
    );
  }

  everything(): Promise<LogEvent[]> {
    return this.#connection.run(async (db) => sound(db, await db.getAll("events")));
  }

  sessions(): Promise<SessionSpan[]> {
    return this.#connection.run(spans);
  }

  damaged(): Promise<DamagedRecord[]> {
    return this.#connection.run((db) => db.getAll("damaged"));
  }

  subscribe(listener: EventListener): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  async persist(): Promise<boolean> {
    try {
      return await navigator.storage.persist();
    } catch {
      return false;
    }
  }

  close(): void {
    this.#connection.close();
    this.#tabs.close();
    this.#listeners.clear();
  }

  #announce(fresh: readonly LogEvent[]): void {
    if (fresh.length === 0) return;
    this.#tabs.send(fresh);
    this.#tell(fresh);
  }

  #tell(events: readonly LogEvent[]): void {
    for (const listener of this.#listeners) listener(events);
  }
}

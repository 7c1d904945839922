import type { SteadyClock } from "./clock.ts";
import type { LogCopy } from "./copy.ts";
import { newDevice, stampNext, tookOver, type Written } from "./device.ts";
import type { EventDraft, LogEvent } from "./event.ts";
import { Connection } from "./idb-connection.ts";
import { copyFirst } from "./idb-copy-first.ts";
import { sound } from "./idb-damage.ts";
import { keepDigest, markStale } from "./idb-digests.ts";
import { putOut } from "./idb-outbox.ts";
import { refill } from "./idb-refill.ts";
import { bringBack, readmit, remove } from "./idb-removals.ts";
import { THIS_DEVICE } from "./idb-schema.ts";
import { spans } from "./idb-spans.ts";
import { write } from "./idb-write.ts";
import { inTime } from "./patience.ts";
import type {
  DamagedRecord,
  DigestRecord,
  EventListener,
  LogStore,
  RemovalListener,
  RemovedSession,
  SessionSpan,
} from "./store.ts";
import { TabChannel } from "./tab-channel.ts";

/**
 * A choice of our own: far longer than a copy takes, and short of the keeper's patience, since the log
 * itself is stored.
 */
const COPY_PATIENCE_MS = 2000;

/** The log in IndexedDB. Any number of tabs may write: the browser lets one transaction in at a time. */
export class IdbStore implements LogStore {
  readonly #clock: SteadyClock;
  readonly #copy: LogCopy | undefined;
  /** A copy that did not answer once is not waited for until it does. */
  #isCopyLate = false;
  readonly #connection: Connection;
  readonly #tabs: TabChannel;
  readonly #listeners = new Set<EventListener>();
  readonly #removalListeners = new Set<RemovalListener>();

  /**
   * @param name the database's name, the same in all tabs
   * @param copy takes what is stored here; an empty log is filled from it
   */
  constructor(name: string, clock: SteadyClock, copy?: LogCopy) {
    this.#clock = clock;
    this.#copy = copy;
    this.#connection = new Connection(
      name,
      async () => copy && copyFirst(name, copy),
      async (db) => copy && refill(db, copy),
    );
    this.#tabs = new TabChannel(
      name,
      (events) => this.#tell(events),
      (session) => this.#tellRemoved(session),
    );
  }

  async append(drafts: readonly EventDraft[], signal?: AbortSignal): Promise<LogEvent[]> {
    const { events, fresh, device } = await this.#connection.run((db) =>
      write(
        db,
        ["events", "device", "digests", "joined", "outbox"],
        async (tx) => {
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
          await markStale(tx.objectStore("digests"), fresh);
          await putOut(tx.objectStore("joined"), tx.objectStore("outbox"), fresh);
          return { events, fresh, device };
        },
        signal,
      ),
    );
    this.#announce(fresh);
    // All of them: those that a try before has stored, and was cut off, may not be in it yet.
    await this.#copyOf(events, device.id);
    return events;
  }

  put(events: readonly LogEvent[]): Promise<LogEvent[]> {
    return this.#put(events, false);
  }

  putOwn(events: readonly LogEvent[]): Promise<LogEvent[]> {
    return this.#put(events, true);
  }

  async #put(events: readonly LogEvent[], isOwn: boolean): Promise<LogEvent[]> {
    const fresh = await this.#connection.run((db) =>
      write(db, ["events", "device", "digests", "removed", "joined", "outbox"], async (tx) => {
        const stored = tx.objectStore("events");
        const removed = new Set(await tx.objectStore("removed").getAllKeys());
        const fresh: LogEvent[] = [];
        for (const event of events) {
          if (removed.has(event.session)) continue;
          if ((await stored.getKey(event.id)) !== undefined) continue;
          await stored.add(event);
          fresh.push(event);
        }
        await markStale(tx.objectStore("digests"), fresh);
        if (isOwn) {
          const device = (await tx.objectStore("device").get(THIS_DEVICE)) ?? newDevice();
          await tx.objectStore("device").put(tookOver(device, fresh), THIS_DEVICE);
          await putOut(tx.objectStore("joined"), tx.objectStore("outbox"), fresh);
        }
        return fresh;
      }),
    );
    this.#announce(fresh);
    await this.#copyOf(fresh);
    return fresh;
  }

  lastWritten(): Promise<Written | undefined> {
    return this.#connection.run(async (db) => (await db.get("device", THIS_DEVICE))?.wrote);
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

  digests(): Promise<DigestRecord[]> {
    return this.#connection.run((db) => db.getAll("digests"));
  }

  keepDigest(session: string, events: number, digest: unknown): Promise<boolean> {
    return this.#connection.run((db) => keepDigest(db, session, events, digest));
  }

  async remove(session: string): Promise<RemovedSession> {
    const removed = await this.#connection.run((db) => remove(db, session));
    this.#copy?.remove(session);
    this.#tabs.sendRemoved(session);
    this.#tellRemoved(session);
    return removed;
  }

  async bringBack(removed: RemovedSession): Promise<void> {
    await this.#connection.run((db) => bringBack(db, removed));
    const events = await this.session(removed.session);
    this.#announce(events);
    await this.#copyOf(events);
  }

  removals(): Promise<string[]> {
    return this.#connection.run((db) => db.getAllKeys("removed"));
  }

  readmit(sessions: readonly string[]): Promise<void> {
    return this.#connection.run((db) => readmit(db, sessions));
  }

  subscribeRemovals(listener: RemovalListener): () => void {
    this.#removalListeners.add(listener);
    return () => this.#removalListeners.delete(listener);
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
    this.#removalListeners.clear();
  }

  /** What is in the copy too outlasts a log that the browser throws away. */
  async #copyOf(events: readonly LogEvent[], device?: string): Promise<void> {
    if (!this.#copy || events.length === 0) return;
    const copied = this.#copy.add(events, device).then(() => {
      this.#isCopyLate = false;
    });
    if (this.#isCopyLate) return;
    await inTime(() => copied, COPY_PATIENCE_MS).catch(() => {
      this.#isCopyLate = true;
    });
  }

  #announce(fresh: readonly LogEvent[]): void {
    if (fresh.length === 0) return;
    this.#tabs.send(fresh);
    this.#tell(fresh);
  }

  #tell(events: readonly LogEvent[]): void {
    for (const listener of this.#listeners) listener(events);
  }

  #tellRemoved(session: string): void {
    for (const listener of this.#removalListeners) listener(session);
  }
}

import type { SteadyClock } from "./clock.ts";
import { newDevice, stampNext, tookOver, type Written } from "./device.ts";
import type { EventDraft, LogEvent } from "./event.ts";
import { MemoryOutbox } from "./memory-outbox.ts";
import type {
  DigestRecord,
  EventListener,
  LogStore,
  RemovalListener,
  RemovedSession,
  SessionSpan,
} from "./store.ts";
import { StoreTrouble } from "./trouble.ts";

/** A store that lasts as long as the page: for tests, and where the browser stores nothing. */
export class MemoryStore implements LogStore {
  readonly #clock: SteadyClock;
  readonly #events = new Map<string, LogEvent>();
  readonly #listeners = new Set<EventListener>();
  readonly #removalListeners = new Set<RemovalListener>();
  readonly #digests = new Map<string, DigestRecord>();
  readonly #removed = new Set<string>();
  /** What goes to a shared board. */
  readonly outbox = new MemoryOutbox(this.#events);
  #device = newDevice();
  #isClosed = false;

  constructor(clock: SteadyClock) {
    this.#clock = clock;
  }

  async append(drafts: readonly EventDraft[]): Promise<LogEvent[]> {
    this.#checkOpen();
    const fresh: LogEvent[] = [];
    const events = drafts.map((draft) => {
      const stored = this.#events.get(draft.id);
      if (stored) return stored;
      const { device, event } = stampNext(this.#device, draft, this.#clock);
      this.#device = device;
      this.#events.set(event.id, event);
      fresh.push(event);
      return event;
    });
    this.outbox.put(fresh.map(({ id }) => id));
    this.#written(fresh);
    return events;
  }

  async put(events: readonly LogEvent[]): Promise<LogEvent[]> {
    this.#checkOpen();
    const fresh: LogEvent[] = [];
    for (const event of events) {
      if (this.#removed.has(event.session) || this.#events.has(event.id)) continue;
      this.#events.set(event.id, event);
      fresh.push(event);
    }
    this.#written(fresh);
    return fresh;
  }

  async putOwn(events: readonly LogEvent[]): Promise<LogEvent[]> {
    const fresh = await this.put(events);
    this.#device = tookOver(this.#device, fresh);
    this.outbox.put(fresh.map(({ id }) => id));
    return fresh;
  }

  async lastWritten(): Promise<Written | undefined> {
    this.#checkOpen();
    return this.#device.wrote;
  }

  async session(id: string): Promise<LogEvent[]> {
    return (await this.everything()).filter((event) => event.session === id);
  }

  async sessions(): Promise<SessionSpan[]> {
    const spans = new Map<string, SessionSpan>();
    for (const { session: id, at } of await this.everything()) {
      const { firstAt, lastAt } = spans.get(id) ?? { firstAt: at, lastAt: at };
      spans.set(id, { id, firstAt: Math.min(firstAt, at), lastAt: Math.max(lastAt, at) });
    }
    return [...spans.values()].sort((a, b) => b.firstAt - a.firstAt);
  }

  async everything(): Promise<LogEvent[]> {
    this.#checkOpen();
    return [...this.#events.values()];
  }

  /** None: nothing but events gets in here. */
  async damaged(): Promise<[]> {
    this.#checkOpen();
    return [];
  }

  async digests(): Promise<DigestRecord[]> {
    this.#checkOpen();
    return [...this.#digests.values()];
  }

  async keepDigest(session: string, events: number, digest: unknown): Promise<boolean> {
    const isWhole = (await this.session(session)).length === events;
    if (isWhole) this.#digests.set(session, { session, digest });
    return isWhole;
  }

  async remove(session: string): Promise<RemovedSession> {
    const events = await this.session(session);
    for (const { id } of events) this.#events.delete(id);
    this.#digests.delete(session);
    this.#removed.add(session);
    for (const listener of this.#removalListeners) listener(session);
    return { session, events, damaged: [] };
  }

  async bringBack({ session, events }: RemovedSession): Promise<void> {
    await this.readmit([session]);
    await this.put(events);
  }

  async removals(): Promise<string[]> {
    this.#checkOpen();
    return [...this.#removed];
  }

  async readmit(sessions: readonly string[]): Promise<void> {
    this.#checkOpen();
    for (const session of sessions) this.#removed.delete(session);
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
    return false;
  }

  close(): void {
    this.#isClosed = true;
    this.#listeners.clear();
    this.#removalListeners.clear();
  }

  #checkOpen(): void {
    if (this.#isClosed) throw new StoreTrouble("closed");
  }

  #written(fresh: readonly LogEvent[]): void {
    for (const { session } of fresh) this.#digests.set(session, { session });
    if (fresh.length > 0) for (const listener of this.#listeners) listener(fresh);
  }
}

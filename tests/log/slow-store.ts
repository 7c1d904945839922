import type { EventDraft, LogEvent } from "../../src/log/event.ts";
import { MemoryStore } from "../../src/log/memory-store.ts";

/** A store that begins nothing while it is held up, and then does all that it was asked for. */
export class SlowStore extends MemoryStore {
  #gate = Promise.resolve();
  #open = () => {};
  /** How often it was asked to append. */
  asked = 0;

  holdUp(): void {
    this.#gate = new Promise((open) => {
      this.#open = open;
    });
  }

  letGo(): void {
    this.#open();
  }

  /** Does what it is asked from now on, and never what it was asked before. */
  forget(): void {
    this.#gate = Promise.resolve();
  }

  override async append(drafts: readonly EventDraft[], signal?: AbortSignal): Promise<LogEvent[]> {
    this.asked += 1;
    await this.#gate;
    signal?.throwIfAborted();
    return super.append(drafts);
  }

  override async putOwn(events: readonly LogEvent[]): Promise<LogEvent[]> {
    await this.#gate;
    return super.putOwn(events);
  }

  override async session(id: string): Promise<LogEvent[]> {
    await this.#gate;
    return super.session(id);
  }

  override async everything(): Promise<LogEvent[]> {
    await this.#gate;
    return super.everything();
  }
}

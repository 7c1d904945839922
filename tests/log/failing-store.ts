import type { SteadyClock } from "../../src/log/clock.ts";
import type { EventDraft, LogEvent } from "../../src/log/event.ts";
import { MemoryStore } from "../../src/log/memory-store.ts";
import { type StoreReason, StoreTrouble } from "../../src/log/trouble.ts";

/** A store that fails as long as it is told to. */
export class FailingStore extends MemoryStore {
  failing: StoreReason | undefined;
  tries = 0;

  constructor(clock: SteadyClock, failing?: StoreReason) {
    super(clock);
    this.failing = failing;
  }

  override async append(drafts: readonly EventDraft[]): Promise<LogEvent[]> {
    this.#fail();
    return super.append(drafts);
  }

  override async put(events: readonly LogEvent[]): Promise<LogEvent[]> {
    this.#fail();
    return super.put(events);
  }

  override async everything(): Promise<LogEvent[]> {
    if (this.failing) throw new StoreTrouble(this.failing);
    return super.everything();
  }

  #fail(): void {
    this.tries += 1;
    if (this.failing) throw new StoreTrouble(this.failing);
  }
}

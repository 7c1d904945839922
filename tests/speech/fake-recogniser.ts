/** A recogniser driven by hand, and a page shown and hidden by hand. */

import type { Page, PageEvents } from "../../src/speech/page.ts";
import type {
  Recogniser,
  RecogniserEars,
  RecogniserKind,
  TroubleReason,
} from "../../src/speech/recogniser.ts";

export class FakeRecogniser implements Recogniser {
  readonly kind: RecogniserKind;
  ears: RecogniserEars | undefined;
  starts = 0;
  stops = 0;
  phrases: readonly string[] = [];
  /** Ends as soon as it is told to stop. */
  endsOnStop = true;

  constructor(kind: RecogniserKind = "web") {
    this.kind = kind;
  }

  get running(): boolean {
    return this.ears !== undefined;
  }

  start(ears: RecogniserEars): void {
    if (this.ears) throw new Error(`${this.kind} was started while running`);
    this.starts += 1;
    this.ears = ears;
  }

  stop(): void {
    this.stops += 1;
    if (this.endsOnStop) this.end();
  }

  abort(): void {
    this.end();
  }

  expect(phrases: readonly string[]): void {
    this.phrases = phrases;
  }

  listen(): void {
    this.ears?.onListening();
  }

  say(text: string, startedAt: number): void {
    const utterance = { alternatives: [{ text }], startedAt, endedAt: startedAt, by: this.kind };
    this.ears?.onUtterance(utterance);
  }

  /** Ends, with a trouble before it if one is given. */
  end(reason?: TroubleReason): void {
    const { ears } = this;
    this.ears = undefined;
    if (reason) ears?.onTrouble({ reason, detail: "as told" });
    ears?.onEnd();
  }
}

export class FakePage implements Page {
  hidden = false;
  online = true;
  readonly #watchers = new Set<PageEvents>();

  get watchers(): number {
    return this.#watchers.size;
  }

  watch(events: PageEvents): () => void {
    this.#watchers.add(events);
    return () => this.#watchers.delete(events);
  }

  setHidden(hidden: boolean): void {
    this.hidden = hidden;
    for (const events of this.#watchers) events.onVisibility();
  }

  goOffline(): void {
    this.online = false;
    for (const events of this.#watchers) events.onOffline();
  }

  goOnline(): void {
    this.online = true;
    for (const events of this.#watchers) events.onOnline();
  }
}

import { type ReadonlySignal, signal } from "@preact/signals";
import { SteadyClock } from "../log/clock.ts";
import { newId } from "../log/identity.ts";
import { MemoryStore } from "../log/memory-store.ts";
import type { LogStore } from "../log/store.ts";
import { Desk } from "./desk.ts";
import { OpenNote } from "./open-note.ts";
import { PacedClock } from "./paced-clock.ts";
import type { Spoken } from "./scribe.ts";
import type { SmallStore } from "./small-store.ts";

export interface Played {
  done: number;
  of: number;
}

/** The angler's own desk, and in its place for the sample or first steps, one that keeps nothing. */
export class Desks {
  readonly own: Desk;
  readonly current: ReadonlySignal<Desk>;
  /** How far the sample is played; undefined while the angler's own session is open. */
  readonly sample: ReadonlySignal<Played | undefined>;
  readonly #note: OpenNote;
  readonly #current;
  readonly #sample = signal<Played>();
  #playing = new AbortController();
  #speed = 1;

  /** @param small keeps which session is open, so that a reload goes on with it */
  constructor(store: LogStore, clock: SteadyClock, small: SmallStore) {
    this.#note = new OpenNote(store, small);
    const id = this.#note.session;
    const settling = this.#note.settle();
    this.own = new Desk({ store, clock, now: Date.now, id, settling });
    const first = this.own.notebook.peek();
    void settling.then((id) => {
      // Who has opened another one meanwhile wants that.
      if (this.own.notebook.peek() === first) this.#note.opened(id);
    });
    this.#current = signal(this.own);
    this.current = this.#current;
    this.sample = this.#sample;
    store.subscribeRemovals((removed) => {
      if (removed === this.own.notebook.peek().id) this.#openOwn(newId());
    });
  }

  /** The sample is being played faster than anyone speaks. */
  get isHurried(): boolean {
    const played = this.#sample.value;
    return played !== undefined && played.done < played.of && this.#speed > 1;
  }

  openSession(id: string): void {
    this.stopSample();
    this.#openOwn(id);
  }

  newSession(): void {
    this.openSession(newId());
  }

  #openOwn(id: string): void {
    this.#note.opened(id);
    this.own.open(id);
  }

  /**
   * Opens a desk in memory and plays the sample day on it; resolves at its end.
   * @param speed how many times faster than it was fished
   * @param hear takes what is said down at the current desk
   */
  async playSample(speed: number, hear: (spoken: Spoken) => Promise<unknown>): Promise<void> {
    this.stopSample();
    this.#speed = speed;
    const { signal: stop } = this.#playing;
    const { playSample, sampleStart } = await import("./sample-player.ts");
    if (stop.aborted) return;
    const paced = new PacedClock(sampleStart(Date.now()));
    const now = () => paced.now();
    const clock = new SteadyClock(now, now);
    const desk = new Desk({ store: new MemoryStore(clock), clock, now, id: newId() });
    this.#current.value = desk;
    const onProgress = (done: number, of: number) => {
      if (!stop.aborted) this.#sample.value = { done, of };
    };
    const notebook = desk.notebook.value;
    await playSample({ clock: paced, speed, notebook, hear, onProgress }, stop);
  }

  /** Opens a desk that keeps nothing, to try phrases at; left like the sample. */
  practise(): void {
    this.stopSample();
    const clock = new SteadyClock();
    const store = new MemoryStore(clock);
    this.#current.value = new Desk({ store, clock, now: Date.now, id: newId() });
  }

  stopSample(): void {
    this.#playing.abort();
    this.#playing = new AbortController();
    this.#sample.value = undefined;
    this.#current.value = this.own;
  }
}

/** A phone whose browser is killed and started again: what is stored is there, notes only as saved. */
import { SteadyClock } from "../../src/log/clock.ts";
import { Desks } from "../../src/scribe/desks.ts";
import { FailingStore } from "../log/failing-store.ts";

/** A log that answers what was last written only once it is let. */
class TestedStore extends FailingStore {
  #gate = Promise.resolve();

  /** @returns lets it answer */
  holdUp(): () => void {
    let letGo = () => {};
    this.#gate = new Promise((done) => {
      letGo = done;
    });
    return letGo;
  }

  override async lastWritten() {
    await this.#gate;
    if (this.failing) throw new Error("It fails.");
    return super.lastWritten();
  }
}

export class KilledPhone {
  wall = Date.UTC(2026, 5, 6, 9);
  readonly #clock = new SteadyClock(
    () => this.wall,
    () => 0,
  );
  readonly store = new TestedStore(this.#clock);
  notes = new Map<string, string>();
  saved = new Map<string, string>();

  /** Starts the app, without waiting for anything. */
  start(): Desks {
    const { notes } = this;
    const small = {
      get: (name: string) => notes.get(name),
      set: (name: string, value: string) => void notes.set(name, value),
    };
    return new Desks(this.store, this.#clock, small);
  }

  /** Starts the app and waits until it is read what is stored. */
  async started(): Promise<Desks> {
    const desks = this.start();
    await desks.own.notebook.peek().ready;
    await idle();
    return desks;
  }

  /** The browser has written to the disk which session is open. */
  save(): void {
    this.saved = new Map(this.notes);
  }

  /** Kills the browser and starts it again. */
  restarted(): Promise<Desks> {
    this.notes = new Map(this.saved);
    return this.started();
  }

  async sessions(): Promise<string[]> {
    return (await this.store.everything()).map(({ session }) => session);
  }
}

/** Until all is done that waits for nothing but its turn. */
export const idle = () => new Promise((done) => setTimeout(done));

import type { Trial } from "../../analysis/best.ts";
import { Running } from "../../analysis/running.ts";
import { type Mass, massOf } from "../../analysis/weights/total.ts";
import type { LogEvent } from "../../log/event.ts";
import { SessionFold } from "../../log/fold.ts";
import type { Session } from "../../log/session.ts";
import { RunningTrials } from "./trials.ts";
import type { PooledFactor } from "./view.ts";

/** One session of a seat, kept up to date; its times are those of the phone's clock. */
export class Fished {
  readonly #fold: SessionFold;
  readonly #sums = new Running();
  readonly #trials = new RunningTrials();
  #weighed: { session: Session; mass: Mass } | undefined;

  constructor(id: string) {
    this.#fold = new SessionFold(id);
  }

  add(event: LogEvent): void {
    this.#fold.add(event);
  }

  get session(): Session {
    return this.#fold.session;
  }

  /** Of an angler who is not known but by the nets he had weighed in this session. */
  get mass(): Mass {
    const { session } = this;
    if (this.#weighed?.session !== session) {
      const sums = this.#sums.follow(session);
      this.#weighed = { session, mass: massOf(sums.loads, sums.biasAfter([])) };
    }
    return this.#weighed.mass;
  }

  /** @param now by the phone's clock, milliseconds since the epoch */
  trialsUpTo(now: number): Record<PooledFactor, Trial[]> {
    return this.#trials.follow(this.session).upTo(now);
  }
}

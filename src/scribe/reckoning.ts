import { Running } from "../analysis/running.ts";
import type { PastSession } from "../analysis/seasons/past.ts";
import type { Bias } from "../analysis/weights/bias.ts";
import type { Session } from "../log/session.ts";
import { biasOf } from "./answers/asking.ts";

export interface Reckoned {
  session: Session;
  /** The session's own sums. */
  sums: Running;
  /** What earlier sessions left. */
  past: readonly PastSession[];
  /** How the angler's words compare with the scales, after all nets that were weighed. */
  bias: Bias;
}

/** The sums over the session in hand; asked again before anything has changed, it works nothing out. */
export class Reckoning {
  readonly #past: () => readonly PastSession[];
  readonly #sums = new Running();
  #last: Reckoned | undefined;

  constructor(past: () => readonly PastSession[] = () => NO_PAST) {
    this.#past = past;
  }

  of(session: Session): Reckoned {
    const past = this.#past();
    if (this.#last?.session !== session || this.#last.past !== past) {
      const sums = this.#sums.follow(session);
      this.#last = { session, sums, past, bias: biasOf({ sums, past }) };
    }
    return this.#last;
  }
}

const NO_PAST: readonly PastSession[] = [];

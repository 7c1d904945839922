import type { Clock } from "../speech/clock.ts";
import type { ListenerState } from "../speech/listener-state.ts";
import type { TroubleReason } from "../speech/recogniser.ts";

/** Waits at least so long are worth a word; most shorter ones pass unnoticed. */
const NOTICED_WAIT_MS = 4_000;
/** Heard on for so long, all was well: the next trouble is a new one. */
const WELL_AFTER_MS = 60_000;

/** What was said meanwhile is lost for certain, so these are told at once. */
const AT_ONCE: ReadonlySet<TroubleReason> = new Set(["network", "no-microphone"]);

/** Tells that nothing is heard any more: as soon as it is sure, and once for each trouble. */
export class Deafness {
  readonly #clock: Pick<Clock, "now" | "elapsed">;
  readonly #tell: (reason: TroubleReason) => void;
  #told: TroubleReason | undefined;
  #listeningSince: number | undefined;

  constructor(clock: Pick<Clock, "now" | "elapsed">, tell: (reason: TroubleReason) => void) {
    this.#clock = clock;
    this.#tell = tell;
  }

  /** All is well, or the angler begins anew. */
  forget(): void {
    this.#told = undefined;
  }

  follow(state: ListenerState): void {
    const since = this.#listeningSince;
    this.#listeningSince = state.is === "listening" ? (since ?? this.#clock.elapsed()) : undefined;
    if (since !== undefined && this.#clock.elapsed() - since >= WELL_AFTER_MS) this.forget();
    const reason = this.#reasonOf(state);
    if (reason === undefined || reason === this.#told) return;
    this.#told = reason;
    this.#tell(reason);
  }

  #reasonOf(state: ListenerState): TroubleReason | undefined {
    if (state.is === "refused" || state.is === "unavailable") return state.trouble.reason;
    if (state.is !== "waiting") return undefined;
    const { reason } = state.trouble;
    const isLong = state.until - this.#clock.now() >= NOTICED_WAIT_MS;
    return isLong || AT_ONCE.has(reason) ? reason : undefined;
  }
}

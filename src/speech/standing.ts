/** How one recogniser is doing: whether it may be started, and from when on. */

import { BackOff } from "./back-off.ts";
import type { Recogniser, Trouble, TroubleReason } from "./recogniser.ts";

/** A refusal may be a busy service speaking (Chrome on Android): it is asked once more after this. */
export const RETRY_REFUSED_MS = 2_000;
/** A recogniser whose place another has taken is left alone for this long, and longer each time. */
export const AWAY_MS = 300_000;
export const LONGEST_AWAY_MS = 1_800_000;
/** Being cut short is normal; cut short this often with nothing heard, something else wants the ears. */
const ABORTS_BORNE = 3;

/** How a run ended. */
export interface Ending {
  trouble: Trouble | undefined;
  /** Whether it heard at all before. */
  listened: boolean;
}

export class Standing {
  readonly recogniser: Recogniser;
  /** Why it may not be started again until the angler asks for it. */
  refusal: Trouble | undefined;
  /** What the present wait is for. */
  trouble: Trouble | undefined;
  /** On the clock's `elapsed` scale. */
  readyAt = Number.NEGATIVE_INFINITY;
  /** The last start, on the same scale. */
  startedAt = Number.NEGATIVE_INFINITY;
  readonly #backOff = new BackOff();
  readonly #away = new BackOff(AWAY_MS, LONGEST_AWAY_MS);
  #refusedBefore = false;
  #aborts = 0;

  constructor(recogniser: Recogniser) {
    this.recogniser = recogniser;
  }

  get kind() {
    return this.recogniser.kind;
  }

  /** Something was recognised, so all is well. */
  heard(): void {
    this.#backOff.reset();
    this.#away.reset();
    this.#aborts = 0;
  }

  /** The microphone is open, so nothing is refused. */
  listening(): void {
    this.#refusedBefore = false;
  }

  /** The angler asks again, so earlier refusals no longer count. */
  forgive(): void {
    this.refusal = undefined;
    this.#refusedBefore = false;
    this.retryNow();
  }

  retryNow(): void {
    this.readyAt = Number.NEGATIVE_INFINITY;
    this.trouble = undefined;
  }

  /** @param hasStandIn Whether another recogniser can take over meanwhile. */
  ended({ trouble, listened }: Ending, elapsed: number, hasStandIn: boolean): void {
    this.retryNow();
    const reason = trouble?.reason;
    if (trouble && this.#refuses(trouble.reason)) {
      this.refusal = trouble;
    } else if (this.#fails(reason, listened)) {
      this.trouble = trouble ?? { reason: "stalled", detail: "ended before it heard" };
      this.readyAt = elapsed + this.#wait(reason, hasStandIn);
    }
  }

  #wait(reason: TroubleReason | undefined, hasStandIn: boolean): number {
    if (hasStandIn) return this.#away.next();
    return reason === "not-allowed" ? RETRY_REFUSED_MS : this.#backOff.next();
  }

  #refuses(reason: TroubleReason): boolean {
    if (reason !== "not-allowed") return FINAL.has(reason);
    const again = this.#refusedBefore;
    this.#refusedBefore = true;
    return again;
  }

  #fails(reason: TroubleReason | undefined, listened: boolean): boolean {
    if (reason === undefined) return !listened;
    if (reason === "no-speech") return false;
    if (reason !== "aborted") return true;
    this.#aborts += 1;
    return !listened || this.#aborts > ABORTS_BORNE;
  }
}

const FINAL: ReadonlySet<TroubleReason> = new Set([
  "service-off",
  "language",
  "unsupported",
  "not-kept",
]);

/** The most preferred that is ready, else the one ready soonest, else none. */
export function chooseFirstReady(
  ranked: readonly Standing[],
  elapsed: number,
): Standing | undefined {
  const usable = ranked.filter(({ refusal }) => !refusal);
  const soonest = [...usable].sort((a, b) => a.readyAt - b.readyAt)[0];
  return usable.find(({ readyAt }) => readyAt <= elapsed) ?? soonest;
}

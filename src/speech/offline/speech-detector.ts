/** Tells from the chances of single frames where an utterance begins and ends. */

/** So long speech must last to count, in frames of 10 ms: shorter are knocks and clicks. */
const BEGIN_FRAMES = 6;
/** Chances at or above which a frame speaks for a beginning, and against an end. */
const BEGIN_CHANCE = 0.6;
const GO_ON_CHANCE = 0.35;

/** People pause for a third of a second within a sentence; much more would keep them waiting. */
export const END_SILENCE_FRAMES = 42;

export type Turn = "begins" | "ends" | undefined;

export class SpeechDetector {
  #speaking = false;
  /** Frames in a row that speak for a change. */
  #run = 0;

  get speaking(): boolean {
    return this.#speaking;
  }

  /** @param chance that a frame is speech */
  next(chance: number): Turn {
    return this.#speaking ? this.#untilEnd(chance) : this.#untilBegin(chance);
  }

  /** Ends an utterance that has gone on for too long to be one. */
  cut(): void {
    this.#speaking = false;
    this.#run = 0;
  }

  #untilBegin(chance: number): Turn {
    // A weak frame takes back one strong one, so that a gap in a word doesn't start it over.
    this.#run = chance >= BEGIN_CHANCE ? this.#run + 1 : Math.max(0, this.#run - 1);
    if (this.#run < BEGIN_FRAMES) return undefined;
    this.#speaking = true;
    this.#run = 0;
    return "begins";
  }

  #untilEnd(chance: number): Turn {
    this.#run = chance < GO_ON_CHANCE ? this.#run + 1 : 0;
    if (this.#run < END_SILENCE_FRAMES) return undefined;
    this.cut();
    return "ends";
  }
}

/** After a longer silence, what went unheard before it says nothing of what does now. Milliseconds. */
const SILENCE_MS = 60_000;

/** How long what is said goes unheard though nothing stands in the way. */
export class DeafSpell {
  longestMs = 0;
  #reported = 0;
  #since: number | undefined;
  #lastAt = 0;

  /**
   * Something was said. @param at on the clock's `elapsed` scale
   * @param reported how many words were ever heard @param isExcused nothing could hear it
   */
  said(at: number, reported: number, isExcused: boolean): void {
    const isHeard = reported > this.#reported;
    const isAfterSilence = at - this.#lastAt > SILENCE_MS;
    this.#reported = reported;
    this.#lastAt = at;
    if (isAfterSilence) this.#since = undefined;
    if (isHeard || isExcused) {
      this.#since = undefined;
      return;
    }
    this.#since ??= at;
    this.longestMs = Math.max(this.longestMs, at - this.#since);
  }
}

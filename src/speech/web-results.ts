/**
 * From what the browser reports to what was said, each thing once.
 *
 * Where a run is continuous, every final is an utterance of its own. Where it is not, the whole run
 * is one utterance, and a final in it may be a partial result in disguise (Chrome on Android), so
 * the words wait until they have stood still or the run has ended.
 */

import { joinCumulative, remainder } from "./finals.ts";
import type { Hypothesis, RecogniserEars } from "./recogniser.ts";
import type { WebResult, WebResultList } from "./web-speech-types.ts";

export const MAX_ALTERNATIVES = 5;
/** Sound that began longer than this before the first words was wind, not the words. */
export const LONGEST_LEAD_MS = 3_000;

interface Open {
  alternatives: Hypothesis[];
  text: string;
  /** Index of the first result it is made of. */
  from: number;
}

export class WebResults {
  readonly #continuous: boolean;
  readonly #now: () => number;
  readonly #ears: Pick<RecogniserEars, "onInterim" | "onUtterance">;
  readonly #settled = new Set<number>();
  #lastText = "";
  #open: Open | undefined;
  /** Words handed over before the browser settled them; only what goes on from them is new. */
  #promoted: { text: string; from: number } | undefined;
  #soundAt: number | undefined;
  #wordsAt: number | undefined;
  #changedAt: number | undefined;

  /** @param now Milliseconds since the epoch. */
  constructor(
    continuous: boolean,
    now: () => number,
    ears: Pick<RecogniserEars, "onInterim" | "onUtterance">,
  ) {
    this.#continuous = continuous;
    this.#now = now;
    this.#ears = ears;
  }

  /** Words that nothing has settled yet; empty when there are none. */
  get openText(): string {
    return this.#open?.text ?? "";
  }

  speechStarted(): void {
    this.#soundAt ??= this.#now();
  }

  /** Takes in the whole list each time: which part of it changed is reported unreliably. */
  take(list: WebResultList): void {
    const open: Array<{ result: WebResult; index: number }> = [];
    for (const [index, result] of Array.from(list).entries()) {
      if (this.#settled.has(index) || index < (this.#promoted?.from ?? 0)) continue;
      const settles = result.isFinal && this.#continuous && !this.#promoted;
      if (settles) this.#settle(index, result);
      else if (hypotheses(result).length > 0) open.push({ result, index });
    }
    this.#setOpen(open);
  }

  /** Hands over the words that nothing has settled. True when there were some. */
  promote(): boolean {
    if (!this.#open) return false;
    const { alternatives, text, from } = this.#open;
    const before = this.#promoted;
    this.#promoted = before ? { ...before, text: `${before.text} ${text}` } : { text, from };
    this.#open = undefined;
    this.#deliver(alternatives);
    return true;
  }

  #settle(index: number, result: WebResult): void {
    this.#settled.add(index);
    const alternatives = this.#unrepeated(hypotheses(result));
    if (alternatives.length > 0) this.#deliver(alternatives);
    this.#lastText = hypotheses(result)[0]?.text ?? this.#lastText;
  }

  /**
   * A final before which nothing was heard to begin may be the last one over again, alone or with
   * more words; the same words said twice have a beginning each.
   */
  #unrepeated(alternatives: Hypothesis[]): Hypothesis[] {
    const began = this.#soundAt !== undefined || this.#wordsAt !== undefined;
    const text = alternatives[0]?.text ?? "";
    const added = began || !this.#lastText ? undefined : remainder(text, this.#lastText);
    if (added === undefined) return alternatives;
    return added ? [{ text: added }] : [];
  }

  #setOpen(results: ReadonlyArray<{ result: WebResult; index: number }>): void {
    const texts = results.map(({ result }) => hypotheses(result)[0]?.text ?? "");
    const whole = this.#continuous ? texts.join(" ") : joinCumulative(texts);
    const text = this.#promoted ? (remainder(whole, this.#promoted.text) ?? "") : whole;
    const before = this.openText;
    const last = results.at(-1);
    const wholeIsLast = last !== undefined && text === texts.at(-1);
    const alternatives = wholeIsLast ? hypotheses(last.result) : [{ text }];
    this.#open = text ? { alternatives, text, from: results[0]?.index ?? 0 } : undefined;
    if (!text || text === before) return;
    this.#wordsAt ??= this.#now();
    this.#changedAt = this.#now();
    this.#ears.onInterim(text);
  }

  #deliver(alternatives: Hypothesis[]): void {
    const endedAt = this.#changedAt ?? this.#now();
    const startedAt = Math.min(this.#startedAt(), endedAt);
    this.#soundAt = undefined;
    this.#wordsAt = undefined;
    this.#changedAt = undefined;
    this.#ears.onUtterance({ alternatives, startedAt, endedAt, by: "web" });
  }

  #startedAt(): number {
    if (this.#wordsAt === undefined) return this.#soundAt ?? this.#now();
    return Math.max(this.#soundAt ?? this.#wordsAt, this.#wordsAt - LONGEST_LEAD_MS);
  }
}

/** A confidence of 0 stands for none given (Chrome on Android). */
function hypotheses(result: WebResult): Hypothesis[] {
  return Array.from(result)
    .slice(0, MAX_ALTERNATIVES)
    .map(({ transcript, confidence }) => ({ text: transcript.trim(), confidence }))
    .filter(({ text }) => text)
    .map(({ text, confidence }) => (confidence > 0 ? { text, confidence } : { text }));
}

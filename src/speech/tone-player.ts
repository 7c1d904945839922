/** Plays the motifs through Web Audio; silent where there is none. */

import { MOTIFS, motifLengthMs, type Note, type Outcome } from "./tones.ts";

/** A loudness that neither clips nor startles; 0 to 1. */
const LOUDNESS = 0.5;
/** Notes swell and fade this fast: a hard edge clicks. */
const EDGE_S = 0.012;

export class TonePlayer {
  readonly #Context: typeof AudioContext | undefined;
  #context: AudioContext | undefined;

  constructor(Context: typeof AudioContext | undefined = globalThis.AudioContext) {
    this.#Context = Context;
  }

  /** Within a gesture: a context made outside one may stay silent. */
  unlock(): void {
    if (!this.#Context) return;
    this.#context ??= new this.#Context();
    this.#resume(this.#context);
  }

  /** Milliseconds the motif will sound; 0 when it cannot. */
  play(outcome: Outcome): number {
    const context = this.#context;
    if (!context) return 0;
    // A context not running would keep the notes and let them all out later.
    if (context.state !== "running") {
      this.#resume(context);
      return 0;
    }
    for (const note of MOTIFS[outcome]) sound(context, note);
    return motifLengthMs(outcome);
  }

  /**
   * Only a suspended context can be resumed: an interrupted one (iOS, a call) comes back itself.
   * Refused outside a gesture; the next tap brings it about.
   */
  #resume(context: AudioContext): void {
    if (context.state === "suspended") context.resume().catch(() => {});
  }
}

function sound(context: AudioContext, { hz, atMs, lengthMs }: Note): void {
  const begin = context.currentTime + atMs / 1000;
  const end = begin + lengthMs / 1000;
  const gain = context.createGain();
  gain.gain.setValueAtTime(0, begin);
  gain.gain.linearRampToValueAtTime(LOUDNESS, begin + EDGE_S);
  gain.gain.setValueAtTime(LOUDNESS, end - EDGE_S);
  gain.gain.linearRampToValueAtTime(0, end);
  const oscillator = context.createOscillator();
  // Overtones carry further from a small speaker than a bare sine.
  oscillator.type = "triangle";
  oscillator.frequency.value = hz;
  oscillator.connect(gain).connect(context.destination);
  oscillator.start(begin);
  oscillator.stop(end);
}

/** Plays the sample day: each phrase is heard at its time, by the same path as any other. */
import { type Notebook, note } from "./notebook.ts";
import type { PacedClock } from "./paced-clock.ts";
import { SAMPLE_LINES, sampleOffset, samplePlan } from "./sample-session.ts";
import type { Spoken } from "./scribe.ts";

export interface SampleStage {
  /** At the day's first moment. */
  clock: PacedClock;
  /** How many times faster than it was fished. */
  speed: number;
  notebook: Notebook;
  hear(spoken: Spoken): Promise<unknown>;
  onProgress(done: number, of: number): void;
}

/** Half past eight on the day before, where the phone is: a day that is over by now. */
export function sampleStart(now: number): number {
  const day = new Date(now);
  day.setDate(day.getDate() - 1);
  return day.setHours(8, 30, 0, 0);
}

/**
 * Resolves at the end of the day, from which the clock runs as any other, or once it is broken off.
 * While a phrase is taken down the clock stands: at a high speed that would be minutes of the day.
 */
export async function playSample(stage: SampleStage, stop: AbortSignal): Promise<void> {
  const { clock, speed, notebook, hear, onProgress } = stage;
  const start = clock.now();
  const of = SAMPLE_LINES.length;
  onProgress(0, of);
  await notebook.write([note({ kind: "plan", plan: samplePlan(start) }, "log")]);
  for (const [index, [time, phrase]] of SAMPLE_LINES.entries()) {
    const at = start + sampleOffset(time);
    await pause(clock.run(speed, at), stop);
    if (stop.aborted) return;
    clock.arrive();
    await hear({ alternatives: [phrase], by: "typed", startedAt: at });
    onProgress(index + 1, of);
  }
  clock.run(1);
}

function pause(ms: number, stop: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    const done = () => {
      clearTimeout(timer);
      stop.removeEventListener("abort", done);
      resolve();
    };
    const timer = setTimeout(done, ms);
    stop.addEventListener("abort", done);
  });
}

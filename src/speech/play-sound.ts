import { systemClock, withinLimit } from "./clock.ts";

/** A call halts a sound and may never let it end; those who wait for it hear nothing meanwhile. */
export const LATE_MS = 3_000;

/** Plays a sound once. Resolves when it is over or would have been long ago, or if none is let out. */
export async function playSound(samples: Float32Array<ArrayBuffer>, rateHz: number): Promise<void> {
  const context = new AudioContext();
  const limitMs = (1000 * samples.length) / rateHz + LATE_MS;
  await withinLimit(play(context, samples, rateHz), limitMs, undefined, systemClock);
  await withinLimit(context.close(), LATE_MS, undefined, systemClock);
}

async function play(
  context: AudioContext,
  samples: Float32Array<ArrayBuffer>,
  rateHz: number,
): Promise<void> {
  const buffer = context.createBuffer(1, samples.length, rateHz);
  buffer.copyToChannel(samples, 0);
  const source = new AudioBufferSourceNode(context, { buffer });
  source.connect(context.destination);
  await context.resume();
  await new Promise((over) => {
    source.onended = over;
    source.start();
  });
}

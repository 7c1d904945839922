/** Plays a sound once. Resolves when it is over; fails where the browser lets no sound out. */
export async function playSound(samples: Float32Array<ArrayBuffer>, rateHz: number): Promise<void> {
  const context = new AudioContext();
  try {
    const buffer = context.createBuffer(1, samples.length, rateHz);
    buffer.copyToChannel(samples, 0);
    const source = new AudioBufferSourceNode(context, { buffer });
    source.connect(context.destination);
    await context.resume();
    await new Promise((over) => {
      source.onended = over;
      source.start();
    });
  } finally {
    await context.close();
  }
}

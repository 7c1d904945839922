/** Brings a whole sound to another rate. */

/** Zero crossings of the ideal filter on each side. */
const REACH = 16;

/** Band-limited by a sinc under a Hann window, its cutoff below half the lower of the two rates. */
export function resample(samples: Float32Array, fromHz: number, toHz: number): Float32Array {
  if (fromHz === toHz) return samples;
  const step = fromHz / toHz;
  const cutoff = 0.95 * Math.min(1, 1 / step);
  const reach = REACH / cutoff;
  return Float32Array.from({ length: Math.floor(samples.length / step) }, (_, index) => {
    const centre = index * step;
    let sum = 0;
    const last = Math.min(samples.length - 1, Math.floor(centre + reach));
    for (let at = Math.max(0, Math.ceil(centre - reach)); at <= last; at += 1) {
      const time = at - centre;
      const angle = Math.PI * cutoff * time;
      const ideal = time === 0 ? cutoff : (cutoff * Math.sin(angle)) / angle;
      sum += (samples[at] as number) * ideal * (0.5 + 0.5 * Math.cos((Math.PI * time) / reach));
    }
    return sum;
  });
}

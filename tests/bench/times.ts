/** Times of things that run in this process. */
import { quantile } from "../tools/hearing/score.ts";

/** Milliseconds by the wall, of one run. */
export function timeOf(run: () => unknown): number {
  const before = performance.now();
  run();
  return performance.now() - before;
}

/** Milliseconds of processor, of all threads of this process. */
export async function workOf(run: () => unknown): Promise<number> {
  const before = process.cpuUsage();
  await run();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

export const median = (values: readonly number[]): number => quantile(values, 0.5);

export interface Timed {
  median: number;
  p95: number;
  p99: number;
}

export const spread = (values: readonly number[]): Timed => ({
  median: median(values),
  p95: quantile(values, 0.95),
  p99: quantile(values, 0.99),
});

/**
 * Runs peers in turn on each input, so that what else the machine does falls on all of them alike.
 * @returns by peer, the median milliseconds of each input over `rounds` runs
 */
export function interleaved<T, Name extends string>(
  peers: Readonly<Record<Name, (input: T) => unknown>>,
  inputs: readonly T[],
  rounds: number,
): Record<Name, number[]> {
  const names = Object.keys(peers) as Name[];
  const medians = names.map((name) => [name, [] as number[]] as const);
  for (const input of inputs) {
    const times = names.map(() => [] as number[]);
    for (let round = 0; round < rounds; round += 1)
      for (const [place, name] of names.entries())
        times[place]?.push(timeOf(() => peers[name](input)));
    for (const [place, [, list]] of medians.entries()) list.push(median(times[place] ?? []));
  }
  return Object.fromEntries(medians) as Record<Name, number[]>;
}

/** The exponent b of cost = a · size^b, by least squares of the logarithms. */
export function growth(sizes: readonly number[], costs: readonly number[]): number {
  const [xs, ys] = [sizes, costs].map((values) => values.map(Math.log)) as [number[], number[]];
  const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
  const [x0, y0] = [mean(xs), mean(ys)];
  const top = xs.reduce((sum, x, place) => sum + (x - x0) * ((ys[place] ?? 0) - y0), 0);
  return top / xs.reduce((sum, x) => sum + (x - x0) ** 2, 0);
}

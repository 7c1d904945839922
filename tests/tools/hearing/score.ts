/** Counts how many phrases come out right, and at what cost. */
import type { Statement } from "../../../grammar/statement.ts";

interface Got {
  statements: readonly Statement[];
  workSeconds: number;
  refused: boolean;
}

export class Score {
  #phrases = 0;
  #exact = 0;
  #withNumbers = 0;
  #numbers = 0;
  #refused = 0;
  #soundSeconds = 0;
  #workSeconds = 0;

  add(wanted: readonly Statement[], got: Got, soundSeconds: number): void {
    this.#phrases += 1;
    if (JSON.stringify(got.statements) === JSON.stringify(wanted)) this.#exact += 1;
    if (numbersOf(wanted) !== "") {
      this.#withNumbers += 1;
      if (numbersOf(got.statements) === numbersOf(wanted)) this.#numbers += 1;
    }
    if (got.refused) this.#refused += 1;
    this.#soundSeconds += soundSeconds;
    this.#workSeconds += got.workSeconds;
  }

  print(): string {
    const factor = (this.#workSeconds / this.#soundSeconds).toFixed(3);
    return [
      `${this.#phrases} phrases`,
      `exact ${share(this.#exact, this.#phrases)}`,
      `numbers ${share(this.#numbers, this.#withNumbers)}`,
      `refused ${share(this.#refused, this.#phrases)}`,
      `real-time factor ${factor}`,
    ].join(" | ");
  }
}

const numbersOf = (statements: readonly Statement[]): string =>
  (JSON.stringify(statements).match(/-?\d+(\.\d+)?/g) ?? []).join(" ");

/** A share in per cent with its 95 % limits (Wilson 1927). */
export function share(hits: number, of: number): string {
  if (of === 0) return "of none";
  const z = 1.96;
  const p = hits / of;
  const middle = (p + z ** 2 / (2 * of)) / (1 + z ** 2 / of);
  const reach = (z / (1 + z ** 2 / of)) * Math.sqrt((p * (1 - p)) / of + z ** 2 / (4 * of ** 2));
  const percent = (x: number) => (100 * x).toFixed(1);
  return `${percent(p)} (${percent(middle - reach)} to ${percent(middle + reach)})`;
}

/** The smallest value that at least this share of all does not exceed; NaN of none. */
export const quantile = (values: readonly number[], share: number): number =>
  [...values].sort((a, b) => a - b)[Math.ceil(share * values.length) - 1] ?? Number.NaN;

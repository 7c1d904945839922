/** The reader in a page, timed there. */
import { Language } from "../../../../grammar/language.ts";
import { createReader } from "../../../../grammar/read.ts";

const timeOf = (run: () => unknown): number => {
  const from = performance.now();
  run();
  return performance.now() - from;
};

const readerPage = {
  /** Milliseconds to make the language ready at once, and then for the first phrase. */
  first(line: string): { ready: number; phrase: number } {
    const language = new Language();
    const ready = timeOf(() => language.matcher);
    return { ready, phrase: timeOf(() => createReader({}, language).read([line])) };
  },

  /**
   * Milliseconds of each line: the mean of some readings, as a slowed processor stops now and then
   * for longer than one takes; and the quickest of such means, as others keep the page waiting.
   */
  each(lines: readonly string[], rounds: number, readings: number): number[] {
    const reader = createReader();
    const mean = (line: string) =>
      timeOf(() => {
        for (let n = 0; n < readings; n += 1) reader.read([line]);
      }) / readings;
    return lines.map((line) => Math.min(...Array.from({ length: rounds }, () => mean(line))));
  },
};

declare global {
  interface Window {
    readerPage: typeof readerPage;
  }
}

window.readerPage = readerPage;

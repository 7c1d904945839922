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
   * Milliseconds of each line: the mean of as many readings as fit into a stretch of time, as a
   * slowed processor stands still in turns that are longer than one reading; and the quickest of
   * some such means, as other programs keep the page waiting.
   */
  each(lines: readonly string[], rounds: number, stretchMs: number): number[] {
    const reader = createReader();
    const mean = (line: string): number => {
      const from = performance.now();
      let [readings, passed] = [0, 0];
      while (passed < stretchMs) {
        reader.read([line]);
        readings += 1;
        passed = performance.now() - from;
      }
      return passed / readings;
    };
    return lines.map((line) => Math.min(...Array.from({ length: rounds }, () => mean(line))));
  },
};

declare global {
  interface Window {
    readerPage: typeof readerPage;
  }
}

window.readerPage = readerPage;

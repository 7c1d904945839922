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

  /** Milliseconds of each line, the quickest of so many readings. */
  each(lines: readonly string[], rounds: number): number[] {
    const reader = createReader();
    return lines.map((line) =>
      Math.min(...Array.from({ length: rounds }, () => timeOf(() => reader.read([line])))),
    );
  },
};

declare global {
  interface Window {
    readerPage: typeof readerPage;
  }
}

window.readerPage = readerPage;

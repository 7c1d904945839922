/** The reader in a page, timed there. */
import { Language } from "../../../../grammar/language.ts";
import { createReader } from "../../../../grammar/read.ts";

const timeOf = (run: () => unknown): number => {
  const from = performance.now();
  run();
  return performance.now() - from;
};

const reader = createReader();

const readerPage = {
  /** Milliseconds to make the language ready at once, and then for the first phrase. */
  first(line: string): { ready: number; phrase: number } {
    const language = new Language();
    const ready = timeOf(() => language.matcher);
    return { ready, phrase: timeOf(() => createReader({}, language).read([line])) };
  },

  /** Reads each line by a timer of its own, which a trace tells apart. */
  async each(lines: readonly string[]): Promise<void> {
    for (const line of lines)
      await new Promise<void>((done) =>
        setTimeout(() => {
          reader.read([line]);
          done();
        }),
      );
  },
};

declare global {
  interface Window {
    readerPage: typeof readerPage;
  }
}

window.readerPage = readerPage;

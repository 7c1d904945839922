/** From a touch until something is shown, timed inside the page. */
import type { Page } from "playwright-core";

export interface Sight {
  /** What appears: a selector, and words in it. */
  shows: string;
  words?: string;
}

export interface Touch extends Sight {
  /** What is touched, by a selector; absent to go to `hash`. */
  press?: string;
  hash?: string;
  /** What appears last, where it does not all appear at once. */
  last?: Sight;
}

export interface Shown {
  /** Milliseconds by the wall, up to the frame that shows it. */
  ms: number;
  /** The same for what appears last. */
  lastMs: number;
}

export const timeToShow = (page: Page, touch: Touch): Promise<Shown> =>
  page.evaluate(shownAfter, touch);

/** Self-contained, since it is sent to the page as text. */
async function shownAfter({ press, hash, last, ...first }: Touch): Promise<Shown> {
  const from = performance.now();
  if (press) document.querySelector<HTMLElement>(press)?.click();
  if (hash) location.hash = hash;
  const isThere = ({ shows, words = "" }: Sight) =>
    [...document.querySelectorAll(shows)].some((one) => one.textContent?.includes(words));
  const untilShown = async (sight: Sight) => {
    while (!isThere(sight)) {
      if (performance.now() - from > 60_000) throw new Error(`not shown: ${sight.shows}`);
      await new Promise(requestAnimationFrame);
    }
    await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    return performance.now() - from;
  };
  const ms = await untilShown(first);
  return { ms, lastMs: last ? await untilShown(last) : ms };
}

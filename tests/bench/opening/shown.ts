/** From a touch until something is shown, timed inside the page. */
import type { Page } from "playwright-core";

export interface Touch {
  /** What is touched, by a selector; absent to go to `hash`. */
  press?: string;
  hash?: string;
  /** What then appears: a selector, and words in it. */
  shows: string;
  words?: string;
}

/** Milliseconds by the wall, up to the frame that shows it. */
export const timeToShow = (page: Page, touch: Touch): Promise<number> =>
  page.evaluate(shownAfter, touch);

/** Self-contained, since it is sent to the page as text. */
async function shownAfter({ press, hash, shows, words = "" }: Touch): Promise<number> {
  const from = performance.now();
  if (press) document.querySelector<HTMLElement>(press)?.click();
  if (hash) location.hash = hash;
  const isThere = () =>
    [...document.querySelectorAll(shows)].some((one) => one.textContent?.includes(words));
  while (!isThere()) {
    if (performance.now() - from > 60_000) throw new Error(`not shown: ${shows} ${words}`);
    await new Promise(requestAnimationFrame);
  }
  await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
  return performance.now() - from;
}

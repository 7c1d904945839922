import { effect, type ReadonlySignal } from "@preact/signals";
import type { Keeping } from "./news.ts";

/**
 * Has the browser ask, in its own words, before the page is left while something is only in its
 * memory. At other times nothing listens: pages that do are not kept for going back (from memory).
 * @param page the window
 */
export function askBeforeLeaving(
  keeping: ReadonlySignal<Pick<Keeping, "unsaved">>,
  page: Pick<EventTarget, "addEventListener" | "removeEventListener">,
): void {
  effect(() => {
    if (keeping.value.unsaved === 0) return;
    page.addEventListener("beforeunload", ask);
    return () => page.removeEventListener("beforeunload", ask);
  });
}

/** Earlier browsers go by the value alone. */
const ask = (event: Event): void => {
  event.preventDefault();
  (event as BeforeUnloadEvent).returnValue = true;
};

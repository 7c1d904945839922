/** What is noted down inside a page while it starts, put there before it loads. */

export interface StartProbe {
  /** Milliseconds from the start of loading until there is a button to touch. */
  usableMs: number | undefined;
  /** From a touch to the frame after it. */
  tapsMs: number[];
}

/** What the page writes to its console then: to be asked costs it work of its own. */
export const USABLE = "can be used";

declare global {
  interface Window {
    startProbe: StartProbe;
  }
}

/** Self-contained, since it is sent to the page as text. @param usable what to write then */
export function installStartProbe(usable: string): void {
  window.startProbe = { usableMs: undefined, tapsMs: [] };
  const probe = window.startProbe;
  new PerformanceObserver((list) => {
    for (const { name, duration } of list.getEntries())
      if (name === "click") probe.tapsMs.push(duration);
  }).observe({ type: "event", durationThreshold: 16, buffered: true } as PerformanceObserverInit);
  new MutationObserver((_, observer) => {
    if (!document.querySelector("main button, #app > button")) return;
    probe.usableMs = performance.now();
    observer.disconnect();
    console.debug(usable);
  }).observe(document, { subtree: true, childList: true });
}

/** What happens to the page that matters to hearing: it is hidden or shown, on the network or off it. */

export interface PageEvents {
  onVisibility(): void;
  onOnline(): void;
  onOffline(): void;
}

export interface Page {
  readonly hidden: boolean;
  /** False where there is surely no network; true may be a network that leads nowhere. */
  readonly online: boolean;
  /** Reports until the returned function is called. */
  watch(events: PageEvents): () => void;
}

export const browserPage: Page = {
  get hidden() {
    return document.hidden;
  },
  get online() {
    return navigator.onLine;
  },
  watch({ onVisibility, onOnline, onOffline }) {
    document.addEventListener("visibilitychange", onVisibility);
    window.addEventListener("online", onOnline);
    window.addEventListener("offline", onOffline);
    return () => {
      document.removeEventListener("visibilitychange", onVisibility);
      window.removeEventListener("online", onOnline);
      window.removeEventListener("offline", onOffline);
    };
  },
};

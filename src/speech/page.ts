/** What happens to the page that matters to hearing: it is hidden, shown, or back on the network. */

export interface PageEvents {
  onVisibility(): void;
  onOnline(): void;
}

export interface Page {
  readonly hidden: boolean;
  /** Reports until the returned function is called. */
  watch(events: PageEvents): () => void;
}

export const browserPage: Page = {
  get hidden() {
    return document.hidden;
  },
  watch({ onVisibility, onOnline }) {
    document.addEventListener("visibilitychange", onVisibility);
    window.addEventListener("online", onOnline);
    return () => {
      document.removeEventListener("visibilitychange", onVisibility);
      window.removeEventListener("online", onOnline);
    };
  },
};

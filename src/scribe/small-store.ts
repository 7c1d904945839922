/** A few lines kept beside the log: settings, and which session is open. */
export interface SmallStore {
  get(name: string): string | undefined;
  set(name: string, value: string): void;
}

const PREFIX = "pegscribe.";

/** The browser's own; where it refuses, nothing is kept and nothing fails. */
export const browserSmallStore: SmallStore = {
  get(name) {
    try {
      return localStorage.getItem(PREFIX + name) ?? undefined;
    } catch {
      return undefined;
    }
  },
  set(name, value) {
    try {
      localStorage.setItem(PREFIX + name, value);
    } catch {
      // A private window: settings last as long as the page.
    }
  },
};

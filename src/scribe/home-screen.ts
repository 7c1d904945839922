import { type ReadonlySignal, signal } from "@preact/signals";

/**
 * `there`: opened from the home screen; `offered`: the browser puts it there at a touch;
 * `by-menu`: where that can be done at all, it is done in the browser's own menu.
 */
export type HomeScreenState = "there" | "offered" | "by-menu";

/** What Chromium sends; in no standard yet. Source: MDN, "BeforeInstallPromptEvent". */
interface InstallOffer extends Event {
  prompt(): Promise<{ outcome: "accepted" | "dismissed" }>;
}

/** Whether the app stands on the home screen, and the way there. */
export class HomeScreen {
  readonly state: ReadonlySignal<HomeScreenState>;
  readonly #state;
  #offer: InstallOffer | undefined;

  constructor(window: Pick<Window, "matchMedia" | "addEventListener">) {
    const { matches } = window.matchMedia("(display-mode: standalone)");
    this.#state = signal<HomeScreenState>(matches ? "there" : "by-menu");
    this.state = this.#state;
    window.addEventListener("beforeinstallprompt", (event) => {
      // Kept for the angler to ask for: an offer on the bank would lie over the screen.
      event.preventDefault();
      this.#offer = event as InstallOffer;
      this.#state.value = "offered";
    });
    window.addEventListener("appinstalled", () => {
      this.#state.value = "there";
    });
  }

  /** To be called within a gesture. An offer can be taken up once. */
  async take(): Promise<void> {
    const offer = this.#offer;
    this.#offer = undefined;
    if (!offer) return;
    const { outcome } = await offer.prompt();
    this.#state.value = outcome === "accepted" ? "there" : "by-menu";
  }
}

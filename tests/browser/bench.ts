/** One phone on the bank: a page with the app in it, ears that a test speaks into, and a voice it can read. */
import type { Browser, BrowserContext, Page } from "playwright-core";
import { ROUTES, type Route } from "../../src/screens/routes.ts";
import { DEFAULT_SETTINGS, type Settings } from "../../src/scribe/settings.ts";
import { installSpeech, type SpeechThere } from "./scripted-speech.ts";

export interface BenchOptions {
  url: string;
  /** Undefined where the browser has no speech of its own. */
  speech?: SpeechThere;
  /** False where the browser refuses to store, as in a private window. */
  storage?: boolean;
  settings?: Partial<Settings>;
  /** Another page of the same browser shares its log and its locks. */
  context?: BrowserContext;
  /** A phone that the app was never opened on, which begins with first steps. */
  isNew?: boolean;
}

/** Tones, so that a test need not wait for a voice after every phrase; questions are still answered. */
const SETTINGS: Settings = { ...DEFAULT_SETTINGS, talkback: "tones" };

export class Bench {
  readonly page: Page;
  /** What the browser complained of. */
  readonly complaints: string[] = [];
  /** Every address that was asked for. */
  readonly requests: string[] = [];

  private constructor(page: Page) {
    this.page = page;
    page.on("console", (message) => {
      if (message.type() === "error") this.complaints.push(message.text());
    });
    page.on("pageerror", (error) => this.complaints.push(error.message));
    page.context().on("request", (request) => this.requests.push(request.url()));
  }

  static async open(
    browser: Browser,
    { url, speech = true, storage = true, settings, context, isNew = false }: BenchOptions,
  ): Promise<Bench> {
    const own = context ?? (await browser.newContext({ viewport: { width: 390, height: 844 } }));
    const page = await own.newPage();
    page.setDefaultTimeout(40_000);
    const bench = new Bench(page);
    await page.addInitScript(installSpeech, speech);
    if (!storage) {
      await page.addInitScript(() =>
        Object.defineProperty(window, "indexedDB", { value: undefined }),
      );
    }
    await page.addInitScript(
      (kept) => localStorage.getItem("pegscribe.settings") ?? localStorage.setItem(...kept),
      ["pegscribe.settings", JSON.stringify({ ...SETTINGS, ...settings })] as const,
    );
    if (!isNew) await page.addInitScript(() => localStorage.setItem("pegscribe.guide", "seen"));
    await page.goto(url);
    await page.getByRole("heading", { level: 1 }).waitFor();
    return bench;
  }

  get context(): BrowserContext {
    return this.page.context();
  }

  async listen(): Promise<void> {
    await this.page.getByRole("button", { name: "Start listening" }).click();
    await this.page.getByRole("heading", { name: "Listening", exact: true }).waitFor();
  }

  /** Says phrases one after the other, each once the app listens, and waits until each is taken. */
  async say(...phrases: string[]): Promise<void> {
    for (const phrase of phrases) {
      await this.hear([phrase], 0.9);
      await this.taken(phrase);
    }
  }

  /** One phrase as the recogniser guesses it, best guess first. @param confidence 0 to 1 */
  async hear(guesses: readonly string[], confidence: number): Promise<void> {
    await this.page.waitForFunction(() => window.scripted.isListening());
    await this.page.evaluate(([said, sure]) => window.scripted.say(said, sure), [
      guesses,
      confidence,
    ] as const);
  }

  async type(...phrases: string[]): Promise<void> {
    for (const phrase of phrases) {
      const field = this.page.getByLabel("Type a phrase");
      await field.fill(phrase);
      // On the field, not on the page: a screen that has just opened takes the focus a frame later.
      await field.press("Enter");
      await this.taken(phrase);
    }
  }

  /** The screen says that it has heard this. */
  async taken(phrase: string): Promise<void> {
    await this.part("Last heard").getByText(`“${phrase}”`).waitFor();
  }

  /** Waits for the next thing that the phone says aloud. */
  async spoken(): Promise<string | undefined> {
    await this.page.waitForFunction(() => window.scripted.spoken.length > 0);
    return this.page.evaluate(() => window.scripted.spoken.shift());
  }

  /** Opens a screen by touch, through the list under "More" where it is not in the bar. */
  readonly go = async (screen: Route["name"]) => {
    const bar = this.page.getByRole("navigation", { name: "Screens" });
    const isInBar = ROUTES.some(({ name, place }) => name === screen && place === "bar");
    await bar.getByRole("link", { name: isInBar ? screen : "More" }).click();
    if (!isInBar) await this.page.getByRole("main").getByRole("link", { name: screen }).click();
    await this.page.locator(`main[aria-label="${screen}"] h1`).first().waitFor();
  };

  /** A part of the screen, by its name. */
  readonly part = (label: string) => this.page.getByLabel(label, { exact: true }).first();

  async close(): Promise<void> {
    await this.context.close();
  }
}

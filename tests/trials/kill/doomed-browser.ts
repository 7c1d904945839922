/** A Chromium that can be killed outright, with every process of it, and started again on its profile. */
import { type ChildProcess, spawn } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { type Browser, chromium, type Page } from "playwright-core";
import { CHROMIUM_ARGS, chromiumPath } from "../../browser/chromium.ts";

const START_LIMIT_MS = 30_000;
const POLL_MS = 5;

export class DoomedBrowser {
  readonly page: Page;
  readonly #browser: Browser;
  readonly #process: ChildProcess;
  readonly #profile: string;

  private constructor(browser: Browser, page: Page, process: ChildProcess, profile: string) {
    this.#browser = browser;
    this.page = page;
    this.#process = process;
    this.#profile = profile;
  }

  /** @param profile the folder that outlives it */
  static async start(profile: string): Promise<DoomedBrowser> {
    const args = [...CHROMIUM_ARGS, "--headless=new", "--remote-debugging-port=0"];
    // In a process group of its own, so that one signal reaches all of it at once.
    const process = spawn(chromiumPath(), [...args, `--user-data-dir=${profile}`, "about:blank"], {
      detached: true,
      stdio: ["ignore", "ignore", "pipe"],
    });
    const browser = await chromium.connectOverCDP(await addressOf(process));
    const [context] = browser.contexts();
    if (!context) throw new Error("The browser has no window.");
    const page = context.pages()[0] ?? (await context.newPage());
    return new DoomedBrowser(browser, page, process, profile);
  }

  /** SIGKILL to every process of the browser; nothing gets a moment to tidy up. */
  kill(): void {
    const { pid } = this.#process;
    if (pid === undefined) return;
    try {
      process.kill(-pid, "SIGKILL");
    } catch (cause) {
      if ((cause as NodeJS.ErrnoException).code !== "ESRCH") throw cause;
    }
  }

  /** Resolves once no process of it is left. */
  async gone(): Promise<void> {
    const until = Date.now() + START_LIMIT_MS;
    while (isInUse(this.#profile)) {
      if (Date.now() > until) throw new Error("A process of the killed browser lives on.");
      await new Promise((done) => setTimeout(done, POLL_MS));
    }
    await this.#browser.close().catch(() => {});
  }

  /** Ends it as its user would, with all that it wants to write. */
  async quit(): Promise<void> {
    const devTools = await this.#browser.newBrowserCDPSession();
    await devTools.send("Browser.close").catch(() => {});
    await this.gone();
  }
}

/** The address that Chromium prints for its driver. */
function addressOf({ stderr }: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let printed = "";
    const limit = setTimeout(
      () => reject(new Error(`Chromium did not start:\n${printed}`)),
      START_LIMIT_MS,
    );
    stderr?.setEncoding("utf8").on("data", (text: string) => {
      printed += text;
      const address = /ws:\/\/\S+/.exec(printed)?.[0];
      if (address === undefined) return;
      clearTimeout(limit);
      resolve(address);
    });
  });
}

/** Whether any process names the profile among its arguments. */
function isInUse(profile: string): boolean {
  return readdirSync("/proc").some((name) => {
    if (!/^\d+$/.test(name)) return false;
    try {
      return readFileSync(`/proc/${name}/cmdline`, "utf8").includes(profile);
    } catch {
      return false;
    }
  });
}

/** A Chromium that can be killed outright, with every process of it, and started again on its profile. */
import { type ChildProcess, spawn } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { type Browser, chromium, type Page } from "playwright-core";
import { CHROMIUM_ARGS, chromiumPath } from "../../browser/chromium.ts";

const START_LIMIT_MS = 30_000;
const POLL_MS = 5;

export class DoomedBrowser {
  readonly browser: Browser;
  readonly page: Page;
  /** Of all its processes, led by the one that started the others. */
  readonly #group: number;
  readonly #printed: () => string;

  private constructor(browser: Browser, page: Page, group: number, printed: () => string) {
    this.browser = browser;
    this.page = page;
    this.#group = group;
    this.#printed = printed;
    process.once("exit", this.kill);
  }

  /** @param profile the folder that outlives it */
  static async start(profile: string): Promise<DoomedBrowser> {
    const args = [...CHROMIUM_ARGS, "--headless=new", "--remote-debugging-port=0"];
    // In a process group of its own, so that one signal reaches all of it at once.
    const started = spawn(chromiumPath(), [...args, `--user-data-dir=${profile}`, "about:blank"], {
      detached: true,
      stdio: ["ignore", "ignore", "pipe"],
    });
    const { pid } = started;
    if (pid === undefined) throw new Error("Chromium cannot be started.");
    let printed = "";
    started.stderr?.setEncoding("utf8").on("data", (text: string) => {
      printed += text;
    });
    const browser = await chromium.connectOverCDP(await addressOf(started));
    const [context] = browser.contexts();
    if (!context) throw new Error("The browser has no window.");
    const page = context.pages()[0] ?? (await context.newPage());
    return new DoomedBrowser(browser, page, pid, () => printed);
  }

  /** Whether it found a database damaged and threw it away. */
  get hasThrownAway(): boolean {
    return this.#printed().includes("corrupted (and deleted) database");
  }

  /** SIGKILL to every process of the browser; nothing gets a moment to tidy up. */
  readonly kill = (): void => signal(-this.#group, "SIGKILL");

  /** Stops the process that keeps the databases; pages and their connections go on. */
  freeze(): void {
    signal(this.#group, "SIGSTOP");
  }

  /** Resolves once no process of it is left. */
  async gone(): Promise<void> {
    const until = Date.now() + START_LIMIT_MS;
    while (livingIn(this.#group).length > 0) {
      if (Date.now() > until) throw new Error("A process of the killed browser lives on.");
      await new Promise((done) => setTimeout(done, POLL_MS));
    }
    process.off("exit", this.kill);
    await this.browser.close().catch(() => {});
  }

  /** Ends it as its user would, with all that it wants to write. */
  async quit(): Promise<void> {
    const devTools = await this.browser.newBrowserCDPSession();
    await devTools.send("Browser.close").catch(() => {});
    await this.gone();
  }
}

/** @param id of a process, or less than nought for a group */
function signal(id: number, name: NodeJS.Signals): void {
  try {
    process.kill(id, name);
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code !== "ESRCH") throw cause;
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

/** The processes of a group that live, by their ids. */
function livingIn(group: number): number[] {
  const ids = readdirSync("/proc").filter((name) => /^\d+$/.test(name));
  return ids.map(Number).filter((id) => {
    // After the name in brackets: state, parent, group.
    const [state, , its] = read(`/proc/${id}/stat`).split(") ").at(-1)?.split(" ") ?? [];
    return Number(its) === group && state !== "Z";
  });
}

/** Of a process that has just ended there is nothing to read. */
function read(path: string): string {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return "";
  }
}

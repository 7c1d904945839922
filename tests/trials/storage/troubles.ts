/** The ways in which storing goes wrong, each as it is brought about and taken away again. */
import type { BrowserContext, Page } from "playwright-core";
import { LOG_NAME } from "../../../src/log/log-name.ts";
import { storingWords } from "../../../src/words/storing.ts";
import type { PageFault } from "./faults-page.ts";
import { fillUp, holdAll, holdOlder } from "./other-tab.ts";

/** Where a trouble is made. */
export interface Scene {
  context: BrowserContext;
  /** Of the app's own place on the web, but without the app. */
  beside: Page;
  /** The app; absent while the trouble is made before it is opened. */
  app?: Page;
}

export interface Trouble {
  name: string;
  /** What the angler is told. */
  advice: string;
  /** It is there before the app is opened. */
  isFromTheStart: boolean;
  /** The app has been opened before, and has a log. */
  hasLog?: true;
  prepare?(scene: Scene): Promise<void>;
  begin(scene: Scene): Promise<void>;
  end(scene: Scene): Promise<void>;
}

const inPage = (name: string, fault: PageFault, advice: string): Trouble => ({
  name,
  advice,
  isFromTheStart: false,
  begin: ({ app }) => setFault(app, fault),
  end: ({ app }) => setFault(app, undefined),
});

/** What the origin may store, in bytes. */
const QUOTA = 4_000_000;

/** @param quotaSize bytes; as the browser would have it where it is left out */
async function allow({ context, beside }: Scene, quotaSize?: number): Promise<void> {
  const devTools = await context.newCDPSession(beside);
  const { origin } = new URL(beside.url());
  const size = quotaSize === undefined ? {} : { quotaSize };
  await devTools.send("Storage.overrideQuotaForOrigin", { origin, ...size });
}

export const TROUBLES: readonly Trouble[] = [
  {
    name: "the phone is full",
    advice: storingWords.quota,
    isFromTheStart: false,
    // Chromium believes for half a minute what it once found free, so this comes before all else.
    prepare: (scene) => allow(scene, QUOTA),
    begin: ({ beside }) => beside.evaluate(fillUp),
    end: (scene) => allow(scene),
  },
  inPage("storing is refused in the middle", "refused", storingWords.refused),
  {
    name: "storing is refused from the start",
    advice: storingWords.refused,
    isFromTheStart: true,
    hasLog: true,
    begin: async ({ context }) => {
      await context.addInitScript(() => {
        window.fault = "refused";
      });
    },
    end: ({ app }) => setFault(app, undefined),
  },
  inPage("the system closes the connection again and again", "cut", storingWords.closed),
  inPage("transactions are broken off", "aborted", storingWords.aborted),
  {
    name: "another tab holds an older log open",
    advice: storingWords.blocked,
    isFromTheStart: true,
    begin: ({ beside }) => beside.evaluate(holdOlder, LOG_NAME),
    end: ({ beside }) => beside.evaluate(() => window.held.release()),
  },
  {
    name: "the disk does not answer",
    advice: storingWords.slow,
    isFromTheStart: false,
    begin: ({ beside }) => beside.evaluate(holdAll, LOG_NAME),
    end: ({ beside }) => beside.evaluate(() => window.held.release()),
  },
];

async function setFault(app: Page | undefined, fault: PageFault | undefined): Promise<void> {
  await app?.evaluate((now) => {
    window.fault = now;
  }, fault);
}

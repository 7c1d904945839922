/** Lighthouse's judgement of the built app, as a phone on a slow network would have it. */
import { type AddressInfo, createServer as createSocket } from "node:net";
import lighthouse, { type Result } from "lighthouse";
import { serveByBrotli } from "./brotli-server.ts";
import { launchChromium } from "./chromium.ts";

const CATEGORIES = ["performance", "accessibility", "best-practices"] as const;

export interface Judgement {
  /** 0 to 100. */
  scores: Record<(typeof CATEGORIES)[number], number>;
  /** Audits that fall short in the categories that are the same on any machine. */
  faults: string[];
}

/**
 * Judges the app in a folder with the mobile preset: a simulated slow phone and network. It is served
 * with Brotli, as static hosts do.
 */
export async function judge(folder: string): Promise<Judgement> {
  const server = await serveByBrotli(folder);
  const port = await freePort();
  const browser = await launchChromium({ args: [`--remote-debugging-port=${port}`] });
  try {
    const run = await lighthouse(server.url, {
      port,
      logLevel: "error",
      onlyCategories: [...CATEGORIES],
    });
    if (!run) throw new Error("Lighthouse gave no result.");
    return judgementOf(run.lhr);
  } finally {
    await browser.close();
    server.close();
  }
}

function judgementOf({ categories, audits }: Result): Judgement {
  const scores = CATEGORIES.map((id) => [id, Math.round((categories[id]?.score ?? 0) * 100)]);
  const faults = (["accessibility", "best-practices"] as const)
    .flatMap((id) => categories[id]?.auditRefs ?? [])
    .map(({ id }) => audits[id])
    .filter((audit) => audit?.score !== null && audit?.score !== undefined && audit.score < 1)
    .map((audit) => `${audit?.id}: ${audit?.title}`);
  return { scores: Object.fromEntries(scores), faults };
}

/** One that nothing listens on now. */
function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const socket = createSocket().listen(0, "127.0.0.1", () => {
      const { port } = socket.address() as AddressInfo;
      socket.close(() => resolve(port));
    });
  });
}

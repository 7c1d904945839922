import type { Bench } from "./bench.ts";

/** Fetches the ears inside the app, through the screen. */
export async function getReady(bench: Bench): Promise<void> {
  const { page } = bench;
  await bench.go("Set-up");
  await page.getByText(/Fetch the ears inside the app once \(\d\.\d MB\)/).waitFor();
  await page.getByRole("button", { name: "Get ready" }).click();
  await page.getByText("Ready: this phone hears without a signal.").waitFor();
  // On a first visit the app's own files may still be on their way.
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
}

/** A phone that has taken a log file in and has one of its sessions open. */
import type { Browser, Page } from "playwright-core";
import { Bench } from "./bench.ts";

export const asFile = (text: string, name = "log.json") => ({
  name,
  mimeType: name.endsWith("csv") ? "text/csv" : "application/json",
  buffer: Buffer.from(text),
});

/** A screen by its address, as a link would. */
export const goTo = (page: Page, screen: string) =>
  page.evaluate((hash) => {
    location.hash = hash;
  }, screen);

/** Takes a file in through the screen; resolves with what is said of it. */
export async function takeIn(bench: Bench, file: ReturnType<typeof asFile>): Promise<string> {
  const { page } = bench;
  await goTo(page, "files");
  const outcome = page.locator("#take-in-outcome");
  const before = await outcome.textContent();
  await page.locator("input[type=file]").setInputFiles(file);
  await page.waitForFunction(
    ([was, reading]) => {
      const now = document.querySelector("#take-in-outcome")?.textContent;
      return now !== was && now !== reading;
    },
    [before, "Reading the file…"] as const,
  );
  return (await outcome.textContent()) ?? "";
}

export async function phoneWith(
  browser: Browser,
  url: string,
  { log, session }: { log: string; session: string },
): Promise<Bench> {
  const bench = await Bench.open(browser, { url });
  await takeIn(bench, asFile(log));
  await bench.page.evaluate((id) => localStorage.setItem("pegscribe.session", id), session);
  await goTo(bench.page, "summary");
  await bench.page.reload();
  await bench.page.getByRole("heading", { name: "Pass it on" }).waitFor();
  return bench;
}

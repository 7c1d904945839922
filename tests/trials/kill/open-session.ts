/** Which session is open in the app, and how another one is begun. */
import { errors, type Page } from "playwright-core";
import { sessionsWords } from "../../../src/words/sessions.ts";
import { tallyWords } from "../../../src/words/tally.ts";
import type { Account, LastEntry } from "./account.ts";

/** Longer than a busy machine takes to read and show a session. */
const SHOWN_LIMIT_MS = 10_000;

/** Whether the app goes on with the session of the last entry, and shows its fish. */
export async function checkOpen(page: Page, account: Account, last: LastEntry): Promise<void> {
  account.restarts += 1;
  const fish = tallyWords.fish(last.fish);
  try {
    await page.waitForFunction(
      (session) => localStorage.getItem("pegscribe.session") === session,
      last.session,
      { timeout: SHOWN_LIMIT_MS },
    );
    const tally = page.getByLabel(tallyWords.weightAndCount).getByText(fish, { exact: true });
    await tally.waitFor({ timeout: SHOWN_LIMIT_MS });
  } catch (cause) {
    if (!(cause instanceof errors.TimeoutError)) throw cause;
    account.faults.add(`after start ${account.restarts} the last entry's session is not open`);
  }
}

/** Ends the session that is open, and begins another. */
export async function beginAnother(page: Page, account: Account): Promise<void> {
  const field = page.getByLabel("Type a phrase");
  await field.fill("all out");
  await field.press("Enter");
  await page.getByLabel("Last heard").getByText("“all out”").waitFor();
  await page.evaluate(() => {
    location.hash = "#sessions";
  });
  const begin = page.getByRole("button", { name: sessionsWords.next.begin, exact: true });
  await begin.waitFor();
  account.begun += 1;
  await begin.click();
}

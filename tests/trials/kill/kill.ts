/**
 * Confirmed means stored: the browser is killed outright at random moments in a stream of entries,
 * started again each time, and what was confirmed by tone is looked for on the disk.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { tallyWords } from "../../../src/words/tally.ts";
import { randomOf } from "../../simulation/random.ts";
import { Account } from "./account.ts";
import { live, liveInPeace, type Setting } from "./life.ts";
import { phrases } from "./phrases.ts";
import { drawLife } from "./plan.ts";
import { Reports } from "./reports.ts";

export interface KillOptions {
  /** Where the built app is served, with a slash at the end. */
  url: string;
  seed: number;
  kills: number;
  /** How many phrases are said in all. */
  entries: number;
}

export interface KillReport {
  kills: number;
  said: number;
  confirmed: number;
  unconfirmedFound: number;
  faults: readonly string[];
}

export async function killAtRandom(options: KillOptions): Promise<KillReport> {
  const { url, seed, kills, entries } = options;
  const random = randomOf(seed);
  const row = phrases(entries, random);
  const profile = mkdtempSync(join(tmpdir(), "pegscribe-profile-"));
  const account = new Account();
  const reports = await Reports.open();
  const setting: Setting = { url, profile, account, reports };
  try {
    // Chromium writes what is not the log, such as which session is open, seconds later.
    await liveInPeace(setting);
    let said = 0;
    for (let left = kills; left > 0; left -= 1) {
      const next = row.slice(said, said + Math.ceil((2 * (entries - said)) / left));
      said += await live(setting, next, drawLife(next.length, random));
    }
    await liveInPeace(setting, (page) => seeAll(page, account));
  } finally {
    await reports.close();
    rmSync(profile, { recursive: true, force: true });
  }
  const { confirmed, unconfirmedFound, faults } = account;
  return {
    kills,
    said: account.said.length,
    confirmed: confirmed.length,
    unconfirmedFound,
    faults: [...faults],
  };
}

/** What was found on the disk is what the app shows: each phrase is one fish. */
async function seeAll(page: Page, { confirmed, unconfirmedFound, faults }: Account): Promise<void> {
  const fish = tallyWords.fish(confirmed.length + unconfirmedFound);
  const tally = page.getByLabel(tallyWords.weightAndCount).getByText(fish, { exact: true });
  await tally.waitFor().catch(() => faults.add(`the app does not show ${fish}`));
}

/**
 * Confirmed means stored: the browser is killed outright at random moments in a stream of entries,
 * started again each time, and what was confirmed by tone is looked for on the disk. The session that
 * the last entry lies in has to be open then.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { randomOf } from "../../simulation/random.ts";
import { Account } from "./account.ts";
import { live, liveInPeace, type Setting } from "./life.ts";
import { phrases } from "./phrases.ts";
import { drawLife } from "./plan.ts";
import { Reports } from "./reports.ts";
import type { Report } from "./stream-page.ts";

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
  /** How often another session was begun, and how many restarts were looked at for the open one. */
  begun: number;
  restarts: number;
  /** How often the browser threw a damaged log away. */
  thrownAway: number;
  faults: readonly string[];
}

export async function killAtRandom(options: KillOptions): Promise<KillReport> {
  const { url, seed, kills, entries } = options;
  const random = randomOf(seed);
  const row = phrases(entries, random);
  const profile = mkdtempSync(join(tmpdir(), "pegscribe-profile-"));
  const account = new Account();
  const reports = await Reports.open<Report>();
  const setting: Setting = { url, profile, account, reports };
  try {
    let said = 0;
    for (let left = kills; left > 0; left -= 1) {
      const next = row.slice(said, said + Math.ceil((2 * (entries - said)) / left));
      said += await live(setting, next, drawLife(next.length, random));
    }
    await liveInPeace(setting);
  } finally {
    await reports.close();
    rmSync(profile, { recursive: true, force: true });
  }
  const { said, confirmed, unconfirmedFound, begun, restarts, thrownAway, faults } = account;
  return {
    ...{ kills, unconfirmedFound, begun, restarts, thrownAway },
    said: said.length,
    confirmed: confirmed.length,
    faults: [...faults],
  };
}

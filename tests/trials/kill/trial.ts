import type { Trial } from "../trial.ts";
import { killAtRandom } from "./kill.ts";

/** In one long stream. */
const ENTRIES = 2000;

export const run: Trial = async ({ url, seed, kills }) => {
  const report = await killAtRandom({ url, seed, kills, entries: ENTRIES });
  const { said, confirmed, unconfirmedFound, begun, restarts, thrownAway, faults } = report;
  return [
    {
      promise: "Confirmed means stored",
      tried: "the browser killed in a stream of entries",
      cases: report.kills,
      faults,
      figures: `${said} said, ${confirmed} confirmed and found, ${unconfirmedFound} found unconfirmed; ${begun} sessions begun; ${restarts} restarts looked at for the session that is open; the log thrown away by the browser ${thrownAway} times`,
    },
  ];
};

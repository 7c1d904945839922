import { afterAll, beforeAll, expect, test } from "vitest";
import { killAtRandom } from "../trials/kill/kill.ts";
import { killUpgrades } from "../trials/old-logs/kill-upgrade.ts";
import { type AppServer, startAppServer } from "./app-server.ts";

/** Enough for each way of dying to come up; `npm run trials` has hundreds. */
const KILLS = 5;
/** A machine that is busy takes its time to start a browser so often. */
const LIMIT = { timeout: 180_000 };

let server: AppServer;

beforeAll(async () => {
  server = await startAppServer();
});

afterAll(() => server?.close());

test(
  "what was confirmed by tone is stored, once, in the session that is open then, though the browser is killed at any moment",
  LIMIT,
  async () => {
    const { url } = server;
    const { faults, confirmed, restarts } = await killAtRandom({
      ...{ url, seed: 1, kills: KILLS, entries: 50 },
    });
    expect(faults).toEqual([]);
    expect(confirmed).toBeGreaterThan(10);
    expect(restarts).toBeGreaterThan(1);
  },
);

test(
  "a log that is being brought up to date is whole, though the browser is killed",
  LIMIT,
  async () => {
    const { url } = server;
    const { faults, within } = await killUpgrades({ url, seed: 1, kills: 2, events: 5000 });
    expect(faults).toEqual([]);
    expect(within).toBeGreaterThan(0);
  },
);

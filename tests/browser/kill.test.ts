import { afterAll, beforeAll, expect, test } from "vitest";
import { killAtRandom } from "../trials/kill/kill.ts";
import { type AppServer, startAppServer } from "./app-server.ts";

/** Enough for each way of dying to come up; `npm run trials` has hundreds. */
const KILLS = 5;
/** A machine that is busy takes its time to start a browser seven times. */
const LIMIT = { timeout: 180_000 };

let server: AppServer;

beforeAll(async () => {
  server = await startAppServer();
});

afterAll(() => server?.close());

test(
  "what was confirmed by tone is stored, once, though the browser is killed at any moment",
  LIMIT,
  async () => {
    const { url } = server;
    const { faults, confirmed } = await killAtRandom({ url, seed: 1, kills: KILLS, entries: 50 });
    expect(faults).toEqual([]);
    expect(confirmed).toBeGreaterThan(10);
  },
);

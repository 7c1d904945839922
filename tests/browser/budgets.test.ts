/** Sizes and counts of the first screen, which come out alike on any machine. */
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, inject, test } from "vitest";
import budgets from "../bench/budgets.json" with { type: "json" };
import { breaches } from "../bench/budgets.ts";
import { figuresOf } from "../bench/first-screen/figures.ts";
import { startOf } from "../bench/first-screen/start.ts";
import { type BrotliServer, serveByBrotli } from "./brotli-server.ts";
import { launchChromium } from "./chromium.ts";

let browser: Browser;
let server: BrotliServer;

beforeAll(async () => {
  browser = await launchChromium();
  server = await serveByBrotli(inject("appFolder"));
});

afterAll(async () => {
  await browser?.close();
  server?.close();
});

test("what is fetched until Live can be used, and in the end, is as little as it was", async () => {
  const figures = figuresOf([await startOf(browser, server.url, 1)]);
  // A page that fetched nothing would be within any budget.
  expect(figures["script until Live can be used, bytes"]).toBeGreaterThan(20_000);
  expect(breaches(budgets["first-screen"], figures)).toEqual([]);
});

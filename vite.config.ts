import type { Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { defineConfig } from "vitest/config";
import { earsFiles } from "./tests/tools/build/ears-files.ts";
import { manifest } from "./tests/tools/build/manifest.ts";
import { noEval } from "./tests/tools/build/no-eval.ts";
import { notices } from "./tests/tools/build/notices.ts";

/**
 * What a built page may do. It talks to nobody but the folder it came from; `wasm-unsafe-eval`
 * lets the offline recogniser compile, and `data:`/`blob:` pictures are the ones made on the spot.
 * A worker is not bound by it, but only the app's own files can be one, and only the board's
 * (`src/board/board-worker.ts`) connects anywhere: to the address in the invitation that was taken.
 */
const CONTENT_SECURITY_POLICY = [
  "default-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "frame-src 'none'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

/** The policy goes into built pages only: the development server works with inline scripts. */
export const contentSecurityPolicy: Plugin = {
  name: "content-security-policy",
  apply: "build",
  transformIndexHtml: () => [
    {
      tag: "meta",
      attrs: { "http-equiv": "Content-Security-Policy", content: CONTENT_SECURITY_POLICY },
      injectTo: "head-prepend",
    },
  ],
};

/**
 * The sums, all in one file but for what the first screen shows: a screen that asks for some would
 * else fetch them in a score of small ones.
 */
const isLaterSum = /src[\\/]analysis[\\/](?!effort[\\/]stretches|rates[\\/]rate-now)|@stdlib/;

const licences = notices();

/** The app asks before it takes an update, so it registers the worker (`sw.js`) itself. */
const offline = VitePWA({
  registerType: "prompt",
  injectRegister: false,
  includeAssets: [],
  includeManifestIcons: false,
  manifest,
  workbox: {
    // The list of the ears' files goes with the version of the app that reads it.
    globPatterns: [
      "ears/files.json",
      "index.html",
      "assets/*.{js,css,wasm}",
      "icon*.{svg,png}",
      "licences.txt",
    ],
    // The decoder is handed its code; the copy that its script names is never asked for.
    globIgnores: ["assets/soundswallower*.wasm"],
    cleanupOutdatedCaches: true,
    // From the first visit on: a page that has got ready for no signal must not need a second one.
    clientsClaim: true,
  },
});

export default defineConfig({
  // Relative addresses, so that the built folder works wherever it is put.
  base: "./",
  plugins: [contentSecurityPolicy, noEval, earsFiles, licences.ofApp, offline],
  build: {
    target: "es2022",
    // Phones that read the rest of the style sheets; what is newer is written out for them.
    cssTarget: ["chrome108", "firefox121", "safari15.4"],
    modulePreload: { polyfill: false },
    rolldownOptions: {
      output: {
        codeSplitting: {
          includeDependenciesRecursively: false,
          groups: [{ name: "sums", test: isLaterSum }],
        },
      },
    },
  },
  worker: { format: "es", plugins: () => [licences.ofWorkers] },
  test: {
    projects: [
      { extends: true, test: { name: "house", include: ["tests/house/**/*.test.ts"] } },
      {
        extends: true,
        test: {
          name: "unit",
          // Generous for a loaded machine; no test measures time.
          testTimeout: 60_000,
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/{house,browser,board}/**", "tests/speech/{supported,unsupported}/**"],
        },
      },
      {
        extends: true,
        test: {
          name: "board",
          include: ["tests/board/**/*.test.ts"],
          globalSetup: "tests/tools/board/ready.ts",
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: "supported",
          environment: "happy-dom",
          include: ["tests/speech/supported/**/*.test.ts"],
        },
      },
      {
        extends: true,
        test: {
          name: "unsupported",
          environment: "happy-dom",
          include: ["tests/speech/unsupported/**/*.test.ts"],
        },
      },
      {
        extends: true,
        test: {
          name: "screens",
          environment: "happy-dom",
          testTimeout: 60_000,
          include: ["tests/**/*.test.tsx"],
          // The testing library takes a test's page down by itself only where `afterEach` is global.
          globals: true,
        },
      },
      {
        extends: true,
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          globalSetup: ["tests/tools/board/ready.ts", "tests/browser/build-app.ts"],
          // One Chromium at a time.
          fileParallelism: false,
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});

import type { Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { defineConfig } from "vitest/config";

/**
 * What a built page may do. It talks to nobody but the folder it came from; `wasm-unsafe-eval`
 * lets the offline recogniser compile, and `data:`/`blob:` pictures are the ones made on the spot.
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
const contentSecurityPolicy: Plugin = {
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

/** The app asks before it takes an update, so it registers the worker (`sw.js`) itself. */
const offline = VitePWA({
  registerType: "prompt",
  injectRegister: false,
  includeAssets: [],
  includeManifestIcons: false,
  manifest: {
    name: "Pegscribe",
    short_name: "Pegscribe",
    description: "Writes down an angler's session by ear, with both hands on the pole",
    lang: "en-GB",
    display: "standalone",
    background_color: "#fff8e7",
    theme_color: "#0b3b3c",
    icons: [
      { src: "icon.svg", sizes: "any", type: "image/svg+xml" },
      { src: "icon-192.png", sizes: "192x192", type: "image/png" },
      { src: "icon-512.png", sizes: "512x512", type: "image/png" },
      { src: "icon-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
    ],
  },
  workbox: {
    globPatterns: ["index.html", "assets/*.{js,css,wasm}", "icon*.{svg,png}"],
    cleanupOutdatedCaches: true,
  },
});

export default defineConfig({
  // Relative addresses, so that the built folder works wherever it is put.
  base: "./",
  plugins: [contentSecurityPolicy, offline],
  build: {
    target: "es2022",
    modulePreload: { polyfill: false },
  },
  worker: { format: "es" },
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
          exclude: ["tests/{house,browser}/**", "tests/speech/{supported,unsupported}/**"],
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
          globalSetup: "tests/browser/build-app.ts",
          // One Chromium at a time.
          fileParallelism: false,
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});

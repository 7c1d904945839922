import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join, resolve } from "node:path";
import type { Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { defineConfig } from "vitest/config";
import { earsGrammar } from "./grammar/fsg/ears.ts";
import { printFsg } from "./grammar/fsg/fsg.ts";
import { EARS_FILES, EARS_FOLDER, SIZES_FILE } from "./src/speech/offline/ears-files.ts";

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

const require = createRequire(import.meta.url);
const DECODER = dirname(require.resolve("soundswallower"));
const SUPPRESSOR = dirname(require.resolve("@jitsi/rnnoise-wasm"));

/** What the ears inside the app are made of, put beside it to be fetched when wanted. */
export const earsFiles: Plugin = {
  name: "ears-files",
  apply: "build",
  config: () => ({
    resolve: { alias: { "blob-polyfill": resolve("src/speech/offline/native-blob.ts") } },
  }),
  generateBundle() {
    const sizes = EARS_FILES.map((file) => {
      const source = earsFile(file);
      this.emitFile({ type: "asset", fileName: EARS_FOLDER + file, source });
      return [file, source.length];
    });
    const source = JSON.stringify(Object.fromEntries(sizes));
    this.emitFile({ type: "asset", fileName: EARS_FOLDER + SIZES_FILE, source });
  },
};

function earsFile(file: (typeof EARS_FILES)[number]): Uint8Array {
  switch (file) {
    case "grammar.fsg":
      return new TextEncoder().encode(printFsg(earsGrammar()));
    case "decoder.wasm":
      return readFileSync(join(DECODER, "soundswallower.web.wasm"));
    case "suppressor.wasm":
      return readFileSync(join(SUPPRESSOR, "dist/rnnoise.wasm"));
    default:
      return readFileSync(join(DECODER, "model/en-us", file));
  }
}

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
    // The decoder is handed its code; the copy that its script names is never asked for.
    globIgnores: ["assets/soundswallower*.wasm"],
    cleanupOutdatedCaches: true,
  },
});

export default defineConfig({
  // Relative addresses, so that the built folder works wherever it is put.
  base: "./",
  plugins: [contentSecurityPolicy, earsFiles, offline],
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

import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import type { TestProject } from "vitest/node";
import { chromiumPath } from "./chromium.ts";

declare module "vitest" {
  interface ProvidedContext {
    /** The folder that holds the app as built for this run. */
    appFolder: string;
  }
}

/** Builds the app once for all browser tests, into a folder of the run's own. */
export default function buildApp(project: TestProject): () => void {
  chromiumPath();
  const folder = mkdtempSync(join(tmpdir(), "pegscribe-"));
  // A process of its own: inside the test runner it would be built as a test, not for use.
  execFileSync(
    process.execPath,
    [
      resolve("node_modules/vite/bin/vite.js"),
      "build",
      "--outDir",
      folder,
      "--emptyOutDir",
      "--logLevel",
      "warn",
    ],
    { stdio: ["ignore", "ignore", "inherit"], env: { ...process.env, NODE_ENV: "production" } },
  );
  project.provide("appFolder", folder);
  return () => rmSync(folder, { recursive: true });
}

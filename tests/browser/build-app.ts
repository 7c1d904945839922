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
  buildInto(folder);
  project.provide("appFolder", folder);
  return () => rmSync(folder, { recursive: true });
}

/** Builds the app as it is for use, in a process of its own: a test runner would build a test. */
export function buildInto(folder: string): void {
  const vite = resolve("node_modules/vite/bin/vite.js");
  const options = ["--outDir", folder, "--emptyOutDir", "--logLevel", "warn"];
  execFileSync(process.execPath, [vite, "build", ...options], {
    stdio: ["ignore", "ignore", "inherit"],
    env: { ...process.env, NODE_ENV: "production" },
  });
}

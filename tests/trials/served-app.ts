/** The app as built for use, served on a free port of 127.0.0.1, for trials outside the test runner. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { preview } from "vite";
import { buildInto } from "../browser/build-app.ts";

/** Does the work with the app's address, which has a slash at its end. */
export async function withServedApp<T>(work: (url: string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), "pegscribe-"));
  try {
    buildInto(folder);
    const server = await preview({
      configFile: false,
      logLevel: "warn",
      build: { outDir: folder },
      preview: { host: "127.0.0.1", port: 0 },
    });
    try {
      return await work(server.resolvedUrls?.local[0] ?? "");
    } finally {
      await server.close();
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

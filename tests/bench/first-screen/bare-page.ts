import { fileURLToPath } from "node:url";
import { build } from "vite";

/** Builds the bare page into a folder, with the same tools as the app. */
export async function buildBarePage(folder: string): Promise<void> {
  await build({
    root: fileURLToPath(new URL("./bare", import.meta.url)),
    configFile: false,
    logLevel: "error",
    base: "./",
    build: {
      outDir: folder,
      emptyOutDir: true,
      target: "es2022",
      modulePreload: { polyfill: false },
    },
  });
}

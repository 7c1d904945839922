import { fileURLToPath } from "node:url";
import { build } from "vite";

/** Builds a page of the bench into a folder, with the tools that build the app. @param source its folder */
export async function buildPage(source: URL, folder: string): Promise<void> {
  await build({
    root: fileURLToPath(source),
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

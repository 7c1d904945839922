/** Puts what the ears need beside the built app, to be fetched when it is wanted. */
import { createHash } from "node:crypto";
import { resolve } from "node:path";
import { gzipSync } from "node:zlib";
import type { Plugin } from "vite";
import { EARS_FOLDER, LIST_FILE } from "../../../src/speech/offline/ears-files.ts";
import { earsPack } from "./ears-pack.ts";

/**
 * Packed by gzip here, since static hosts pack few kinds of files by themselves, and browsers
 * unpack no better one by script. The names end in nothing that a host would unpack on the way.
 */
export const earsFiles: Plugin = {
  name: "ears-files",
  apply: "build",
  config: () => ({
    resolve: { alias: { "blob-polyfill": resolve("src/speech/offline/native-blob.ts") } },
  }),
  generateBundle() {
    const files = Object.entries(earsPack()).map(([file, bytes]) => {
      const source = gzipSync(bytes, { level: 9 });
      const digest = createHash("sha256").update(bytes).digest("hex").slice(0, 8);
      const name = `${file}-${digest}`;
      this.emitFile({ type: "asset", fileName: EARS_FOLDER + name, source });
      return [file, { name, bytes: source.length }] as const;
    });
    const source = JSON.stringify(Object.fromEntries(files));
    this.emitFile({ type: "asset", fileName: EARS_FOLDER + LIST_FILE, source });
  },
};

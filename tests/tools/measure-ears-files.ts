/** Prints what the ears' files weigh: as they are, as the build packs them, and by Brotli. */
import { brotliCompressSync, gzipSync } from "node:zlib";
import { earsPack } from "./build/ears-pack.ts";

const rows = Object.entries(earsPack()).map(
  ([file, bytes]) =>
    [
      file,
      bytes.length,
      gzipSync(bytes, { level: 9 }).length,
      brotliCompressSync(bytes).length,
    ] as const,
);
const sum = ([, ...sizes]: (typeof rows)[number], [, ...more]: (typeof rows)[number]) =>
  [
    "all",
    ...sizes.map((size, index) => size + (more[index] as number)),
  ] as unknown as (typeof rows)[number];
console.log("file | bytes | gzip | Brotli");
for (const row of [...rows, rows.reduce(sum)]) console.log(row.join(" | "));

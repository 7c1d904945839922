import { readdirSync, readFileSync } from "node:fs";
import { posix } from "node:path";
import type { Sources } from "./floors.ts";

/** What `.gitignore` keeps out of the project, and the history itself. */
const IGNORED = /^(\.git|node_modules|dist|\.DS_Store|.*\.log)$/;

/** The names of what lies in a folder of the project. */
export function entriesOf(folder: string): string[] {
  return readdirSync(folder).filter((name) => !IGNORED.test(name));
}

/** The text of every file in folders of the project, however deep, whose name ends as given. */
export function readSources(folders: readonly string[], ending: RegExp): Sources {
  const paths = folders.flatMap((folder) =>
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && ending.test(entry.name))
      .map((entry) => posix.join(entry.parentPath, entry.name)),
  );
  return new Map(paths.map((path) => [path, readFileSync(path, "utf8")]));
}

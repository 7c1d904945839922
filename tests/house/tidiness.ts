import type { Sources } from "./floors.ts";

const MOST_LINES = 300;
const USUAL_LINES = 150;

/** All that may lie in the project's folder, what is built and installed aside. */
const TOP_LEVEL = new Set([
  ...["README.md", "DEVELOPERS.md", "LICENSE"],
  ...["package.json", "package-lock.json", "tsconfig.json", "vite.config.ts", "biome.json"],
  ...["index.html", ".gitignore", ".npmrc", ".editorconfig"],
  ...["src", "grammar", "tests", "public", ".ci"],
]);

/** Folders that some machine's user has, and no project. */
const MACHINE_PATH = /(?<![\w.-])\/(?:home|Users|root|tmp|work|mnt|var\/folders)\/[\w./-]+/g;

/** Says which files hold more lines than one job needs. */
export function tooLong(sources: Sources): string[] {
  return longerThan(MOST_LINES, sources).map(
    ({ path, lines }) => `${path} has ${lines} lines; ${MOST_LINES} are the most.`,
  );
}

/** Names the files that are longer than most, for a look. */
export function worthALook(sources: Sources): string[] {
  return longerThan(USUAL_LINES, sources).map(({ path, lines }) => `${path}: ${lines} lines`);
}

function longerThan(most: number, sources: Sources): { path: string; lines: number }[] {
  return [...sources]
    .map(([path, source]) => ({ path, lines: source.trimEnd().split("\n").length }))
    .filter(({ lines }) => lines > most);
}

/** Says what lies in the project's folder without a place there. */
export function strayEntries(names: readonly string[]): string[] {
  return names.filter((name) => !TOP_LEVEL.has(name)).map((name) => `${name} is not known here.`);
}

/** Says where a path of somebody's machine got into a file. */
export function machinePaths(sources: Sources): string[] {
  return [...sources].flatMap(([path, source]) =>
    source
      .split("\n")
      .flatMap((line, index) =>
        [...line.matchAll(MACHINE_PATH)].map(([found]) => `${path}:${index + 1} names ${found}.`),
      ),
  );
}

/** Says which entries of a lock file carry the address they were fetched from. */
export function lockedAddresses(lockfile: string): string[] {
  const { packages } = JSON.parse(lockfile) as { packages: Record<string, { resolved?: string }> };
  return Object.entries(packages)
    .filter(([, { resolved }]) => resolved !== undefined)
    .map(([name]) => `${name} carries an address.`);
}

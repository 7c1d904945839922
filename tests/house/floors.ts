import { posix } from "node:path";
import { type Import, readImports } from "./imports.ts";

/** Sources by path from the project's folder, such as `src/log/event.ts`. */
export type Sources = ReadonlyMap<string, string>;

/**
 * What each room may draw on, from the top of the house down. Mostly it is all that lies below;
 * the exceptions keep the lower rooms fit for use by themselves.
 */
const FLOORS = {
  main: [
    "screens",
    "scribe",
    "share",
    "board",
    "analysis",
    "log",
    "speech",
    "ui",
    "words",
    "grammar",
  ],
  screens: ["scribe", "share", "board", "analysis", "log", "speech", "ui", "words", "grammar"],
  scribe: ["share", "board", "analysis", "log", "speech", "ui", "words", "grammar"],
  share: ["analysis", "log", "speech", "ui", "words", "grammar"],
  board: ["analysis", "log", "words", "grammar"],
  analysis: ["log", "grammar"],
  log: ["speech", "ui", "words", "grammar"],
  speech: ["ui", "words", "grammar"],
  ui: ["words"],
  words: [],
  grammar: [],
} as const satisfies Record<string, readonly string[]>;

type Room = keyof typeof FLOORS;

/** Rooms that may know the shapes of another but call nothing in it. */
const TYPES_ONLY: Partial<Record<Room, Room>> = { analysis: "log", speech: "grammar" };

/** Packages that one place alone may import, so that the rest does not lean on their ways. */
const KEPT_PACKAGES: [name: RegExp, where: RegExp, place: string][] = [
  [/^compromise(\/|$)/, /^grammar\/match\/compromise\.ts$/, "grammar/match/compromise.ts"],
  [/^idb(\/|$)/, /^src\/log\/idb-[^/]+\.ts$/, "src/log/idb-*.ts"],
  [/^node:/, /^grammar\/cli\//, "grammar/cli/"],
];

/** Says, a sentence each, which imports go against the order of the rooms. */
export function brokenFloors(sources: Sources): string[] {
  return [...sources]
    .filter(([path]) => /\.[jt]sx?$/.test(path))
    .flatMap(([path, source]) => brokenIn(path, source));
}

function brokenIn(path: string, source: string): string[] {
  const room = roomOf(path);
  if (!room) return [`${path} stands in no room.`];
  return readImports(path, source).flatMap((one) => {
    const fault = faultOf(path, room, one);
    return fault ? [`${path}:${one.line} ${fault}`] : [];
  });
}

function faultOf(path: string, room: Room, { specifier, typeOnly }: Import): string | undefined {
  if (specifier === null) return "imports what can't be told from reading it.";
  if (!/^[./]/.test(specifier)) return packageFault(path, specifier);
  const target = resolve(path, specifier);
  const other = roomOf(target);
  if (!other) return `imports ${target}, which stands in no room.`;
  if (other === room) return undefined;
  if (!(FLOORS[room] as readonly Room[]).includes(other)) {
    return `imports ${target}: ${room} may not draw on ${other}.`;
  }
  if (TYPES_ONLY[room] === other && !typeOnly) {
    return `imports ${target}: ${room} may draw on ${other} for types only.`;
  }
  return undefined;
}

function packageFault(path: string, specifier: string): string | undefined {
  const kept = KEPT_PACKAGES.find(([name, where]) => name.test(specifier) && !where.test(path));
  return kept && `imports ${specifier}, which only ${kept[2]} may.`;
}

/** A path from the project's folder, without what a bundler reads behind a question mark. */
function resolve(path: string, specifier: string): string {
  const plain = specifier.replace(/\?.*$/, "");
  return plain.startsWith("/") ? plain.slice(1) : posix.join(posix.dirname(path), plain);
}

function roomOf(path: string): Room | undefined {
  if (path === "src/main.tsx") return "main";
  const name = /^(?:src\/)?([^/]+)\//.exec(path)?.[1];
  if (!name || path.startsWith("src/") === (name === "grammar")) return undefined;
  return name !== "main" && Object.hasOwn(FLOORS, name) ? (name as Room) : undefined;
}

/** The licences of all that is shipped with the app, gathered from what was really built into it. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { Plugin, Rolldown } from "vite";

export const NOTICES_FILE = "licences.txt";

interface Notice {
  name: string;
  text: string;
}

/** Shipped, but built in by ways of their own: the ears' worker and files, and the service worker. */
const APART = ["soundswallower", "@jitsi/rnnoise-wasm"];
const SERVICE_WORKER = [
  ...["core", "precaching", "routing", "strategies"].map((part) => `workbox-${part}`),
  // What loads its parts.
  "@trickfilm400/rollup-plugin-off-main-thread",
];

/** What bundling leaves in every script: the code that fetches and joins them. */
const BUNDLERS = ["vite", "rolldown"];
/** Before the terms of what is inside the bundler itself, none of which is shipped. */
const ITS_OWN_TERMS = /^# Licenses of bundled dependencies/m;

const require = createRequire(import.meta.url);
const beside = (file: string) => readFileSync(new URL(`notices/${file}`, import.meta.url), "utf8");

/** Parts that come inside a package which tells their licence elsewhere, or not at all. */
const INSIDE: readonly Notice[] = [
  {
    name: "SoundSwallower, after CMU PocketSphinx (the ears' decoder)",
    text: beside("soundswallower.txt"),
  },
  { name: "RNNoise (the ears' suppressor)", text: beside("rnnoise.txt") },
  {
    name: "CMU Sphinx model of US English, 8 kHz, and pronouncing dictionary (the ears' model)",
    text: readFileSync(join(folderOf("soundswallower"), "model/en-us/README.txt"), "utf8"),
  },
];

/** One plugin for the app and one for its workers, which are built apart and before it. */
export function notices(): { ofApp: Plugin; ofWorkers: Plugin } {
  const packages = new Set([...APART, ...SERVICE_WORKER, ...BUNDLERS]);
  const gather = (bundle: Rolldown.OutputBundle) => {
    for (const file of Object.values(bundle))
      if (file.type === "chunk")
        for (const name of file.moduleIds.flatMap(packageOf)) packages.add(name);
  };
  return {
    ofWorkers: {
      name: "notices-of-workers",
      apply: "build",
      generateBundle: (_, bundle) => gather(bundle),
    },
    ofApp: {
      name: "notices",
      apply: "build",
      generateBundle(_, bundle) {
        gather(bundle);
        const source = printNotices([...INSIDE, ...[...packages].sort().map(noticeOf)]);
        this.emitFile({ type: "asset", fileName: NOTICES_FILE, source });
      },
    },
  };
}

/** The package that a module stands in, if any. */
function packageOf(module: string): string[] {
  const [, name] = /.*\/node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(module) ?? [];
  return name === undefined ? [] : [name];
}

/** Fails for a package that says nothing of its licence. */
function noticeOf(name: string): Notice {
  const folder = folderOf(name);
  const about = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const files = readdirSync(folder).filter((file) =>
    /^(third-party-)?(licen[cs]e|copying|notice)/i.test(file),
  );
  const texts = files
    .sort()
    .map((file) => readFileSync(join(folder, file), "utf8").split(ITS_OWN_TERMS)[0]);
  const kind = about.license ?? files[0];
  if (typeof kind !== "string") throw new Error(`${name} tells no licence.`);
  return { name: `${name} ${about.version} (${kind})`, text: texts.join("\n") };
}

function folderOf(name: string): string {
  const folders = require.resolve.paths(name) ?? [];
  const found = folders.map((folder) => join(folder, name)).find((folder) => existsSync(folder));
  if (found === undefined) throw new Error(`${name} is not installed.`);
  return found;
}

/** Each text once, under all that it holds for. */
function printNotices(all: readonly Notice[]): string {
  const names = new Map<string, string[]>();
  for (const { name, text } of all) {
    const plain = text.replace(/\r/g, "").trim();
    names.set(plain, [...(names.get(plain) ?? []), name]);
  }
  const parts = Array.from(names, ([text, of]) => `${of.join("\n")}\n\n${text}`);
  return `Pegscribe is made with the parts below, under these licences.\n\n${parts.join(`\n\n${"-".repeat(72)}\n\n`)}\n`;
}

/** The files the ears need beside the app's own scripts: fetched when wanted, then kept. */
import { MODEL_PARTS } from "./decoder-module.ts";

/** Where they stand, from the page. */
export const EARS_FOLDER = "ears/";
export const EARS_FILES = [
  ...MODEL_PARTS,
  "dict.txt",
  "grammar.fsg",
  "decoder.wasm",
  "suppressor.wasm",
] as const;
export type EarsFile = (typeof EARS_FILES)[number];

/** Bytes by file, written by the build. */
export const SIZES_FILE = "sizes.json";

export interface Progress {
  /** Bytes. */
  loaded: number;
  total: number;
}

const CACHE = "pegscribe-ears";

/** @param base the address of the page's folder, with a slash at the end */
export class EarsFiles {
  readonly #folder: string;

  constructor(base: string) {
    this.#folder = new URL(EARS_FOLDER, base).href;
  }

  /** How much there is to fetch in all, in bytes. */
  async size(): Promise<number> {
    const sizes = await this.#sizes();
    return EARS_FILES.reduce((sum, file) => sum + sizes[file], 0);
  }

  /** Whether all files are kept on this device. */
  async areKept(): Promise<boolean> {
    // A page that came unencrypted has no such storage.
    if (!("caches" in globalThis)) return false;
    const cache = await caches.open(CACHE);
    const found = await Promise.all(EARS_FILES.map((file) => cache.match(this.#address(file))));
    return found.every((response) => response !== undefined);
  }

  /** Fetches and keeps what is missing. Fails where the network or the storage does. */
  async keep(onProgress: (progress: Progress) => void): Promise<void> {
    const sizes = await this.#sizes();
    const total = await this.size();
    const cache = await caches.open(CACHE);
    let loaded = 0;
    for (const file of EARS_FILES) {
      const address = this.#address(file);
      if (!(await cache.match(address))) await cache.put(address, await fetched(address));
      loaded += sizes[file];
      onProgress({ loaded, total });
    }
  }

  /** A file's bytes: as kept, else from the network without being kept. */
  async read(file: EarsFile): Promise<Uint8Array<ArrayBuffer>> {
    const address = this.#address(file);
    const kept = await (await caches.open(CACHE)).match(address);
    return new Uint8Array(await (kept ?? (await fetched(address))).arrayBuffer());
  }

  #address(file: EarsFile | typeof SIZES_FILE): string {
    return this.#folder + file;
  }

  async #sizes(): Promise<Record<EarsFile, number>> {
    return (await fetched(this.#address(SIZES_FILE))).json();
  }
}

async function fetched(address: string): Promise<Response> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address} answered ${response.status}.`);
  return response;
}

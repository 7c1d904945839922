/** The files the ears need beside the app's own scripts: fetched when wanted, then kept. */
import { MODEL_PARTS } from "./decoder-module.ts";

/** Where they stand, from the page. */
export const EARS_FOLDER = "ears/";
export const EARS_FILES = [
  ...MODEL_PARTS,
  /** How every word of the grammar is said. */
  "words.txt",
  "grammar.fsg",
  "decoder.wasm",
  "suppressor.wasm",
  /** The model's whole dictionary, which only the angler's own words ask for. */
  "dictionary.txt",
] as const;
export type EarsFile = (typeof EARS_FILES)[number];

/**
 * Says under which name each file stands, written by the build. A name holds its content's digest:
 * files of two versions of the app never get mixed.
 */
export const LIST_FILE = "files.json";

/** Bytes as fetched and kept: packed by gzip, which no host need know of. */
export type EarsList = Readonly<Record<EarsFile, { name: string; bytes: number }>>;

export interface Progress {
  /** Bytes. */
  loaded: number;
  total: number;
}

const CACHE = "pegscribe-ears";

export class EarsFiles {
  readonly #folder: string;

  /** @param base the address of the page's folder, with a slash at the end */
  constructor(base: string) {
    this.#folder = new URL(EARS_FOLDER, base).href;
  }

  /** How much there is to fetch in all, in bytes. */
  async size(): Promise<number> {
    return total(await this.#newList());
  }

  /** Whether all files, of this version of the app or an earlier one, are kept on this device. */
  async areKept(): Promise<boolean> {
    // A page that came unencrypted has no such storage.
    if (!("caches" in globalThis)) return false;
    return (await this.#keptList()) !== undefined;
  }

  /** Fetches and keeps what is missing or has changed. Fails where the network or the storage does. */
  async keep(onProgress: (progress: Progress) => void): Promise<void> {
    const list = await this.#newList();
    const cache = await caches.open(CACHE);
    let loaded = 0;
    for (const { name, bytes } of Object.values(list)) {
      const address = this.#folder + name;
      if (!(await cache.match(address))) await cache.put(address, await fetched(address));
      loaded += bytes;
      onProgress({ loaded, total: total(list) });
    }
    // Last, so that a list is only ever kept with all that it names.
    await cache.put(this.#folder + LIST_FILE, new Response(JSON.stringify(list)));
    await this.#forgetAllBut(list, cache);
  }

  async remove(): Promise<void> {
    await caches.delete(CACHE);
  }

  /** A kept file's bytes, unpacked. Fails where it is not kept. */
  async read(file: EarsFile): Promise<Uint8Array<ArrayBuffer>> {
    const list = await this.#keptList();
    const address = this.#folder + (list?.[file].name ?? file);
    const kept = await (await caches.open(CACHE)).match(address);
    if (!kept?.body) throw new Error(`${file} is not kept.`);
    const unpacked = kept.body.pipeThrough(new DecompressionStream("gzip"));
    return new Uint8Array(await new Response(unpacked).arrayBuffer());
  }

  async #newList(): Promise<EarsList> {
    return (await fetched(this.#folder + LIST_FILE)).json();
  }

  async #keptList(): Promise<EarsList | undefined> {
    const kept = await (await caches.open(CACHE)).match(this.#folder + LIST_FILE);
    return kept?.json();
  }

  async #forgetAllBut(list: EarsList, cache: Cache): Promise<void> {
    const names = [LIST_FILE, ...Object.values(list).map(({ name }) => name)];
    const wanted = new Set(names.map((name) => this.#folder + name));
    for (const { url } of await cache.keys()) if (!wanted.has(url)) await cache.delete(url);
  }
}

const total = (list: EarsList): number =>
  Object.values(list).reduce((sum, { bytes }) => sum + bytes, 0);

async function fetched(address: string): Promise<Response> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address} answered ${response.status}.`);
  return response;
}

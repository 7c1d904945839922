import type { Page } from "playwright-core";

/**
 * Where a page keeps anything that could be sound: bytes in any store of any database, files that
 * are no text, or lines of text longer than any that is heard, in which bytes could be written.
 */
export const keptSounds = (page: Page): Promise<string[]> =>
  page.evaluate(async () => {
    const finished = <T>(request: IDBRequest<T>) =>
      new Promise<T>((done, failed) => {
        request.onsuccess = () => done(request.result);
        request.onerror = () => failed(request.error);
      });
    const longest = 10_000;
    const hasBytes = (value: unknown): boolean =>
      (typeof value === "string" && value.length > longest) ||
      value instanceof Blob ||
      value instanceof ArrayBuffer ||
      ArrayBuffer.isView(value) ||
      (typeof value === "object" && value !== null && Object.values(value).some(hasBytes));
    const found: string[] = [];
    for (const { name = "" } of await indexedDB.databases()) {
      const db = await finished(indexedDB.open(name));
      for (const store of db.objectStoreNames) {
        const records = await finished(db.transaction(store).objectStore(store).getAll());
        if (records.some(hasBytes)) found.push(`${name}/${store}`);
      }
      db.close();
    }
    const look = async (folder: FileSystemDirectoryHandle, path: string): Promise<void> => {
      for await (const [name, entry] of folder.entries()) {
        if (entry instanceof FileSystemDirectoryHandle) await look(entry, `${path}${name}/`);
        else if (entry instanceof FileSystemFileHandle) {
          const text = await (await entry.getFile()).text();
          if (/\ufffd|[^\n]{20000}/.test(text)) found.push(`${path}${name}`);
        }
      }
    };
    await look(await navigator.storage.getDirectory(), "files/");
    for (const [name, text] of Object.entries(localStorage)) if (hasBytes(text)) found.push(name);
    return found;
  });

/** The addresses under which anything is kept in a cache, without what tells versions apart. */
export const cachedAddresses = (page: Page): Promise<string[]> =>
  page.evaluate(async () => {
    const all: string[] = [];
    for (const name of await caches.keys()) {
      for (const { url } of await (await caches.open(name)).keys())
        all.push(url.replace(/\?.*/, ""));
    }
    return all;
  });

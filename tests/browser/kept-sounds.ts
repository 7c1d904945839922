import type { Page } from "playwright-core";

/** Where a page keeps anything that could be sound: bytes in any store of any database. */
export const keptSounds = (page: Page): Promise<string[]> =>
  page.evaluate(async () => {
    const finished = <T>(request: IDBRequest<T>) =>
      new Promise<T>((done, failed) => {
        request.onsuccess = () => done(request.result);
        request.onerror = () => failed(request.error);
      });
    const hasBytes = (value: unknown): boolean =>
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
    return found;
  });

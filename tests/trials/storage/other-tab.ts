/** What another tab of the same place does to storage. Each is self-contained: it is sent as text. */

declare global {
  interface Window {
    /** What the other tab holds. */
    held: { release(): void };
  }
}

/** Stores until not even a few bytes more are taken. */
export function fillUp(): Promise<void> {
  return new Promise((done, failed) => {
    const opening = indexedDB.open("filler", 1);
    opening.onupgradeneeded = () =>
      opening.result.createObjectStore("any", { autoIncrement: true });
    opening.onerror = () => failed(opening.error);
    opening.onsuccess = () => {
      const add = (size: number) => {
        const tx = opening.result.transaction("any", "readwrite");
        tx.objectStore("any").add(crypto.getRandomValues(new Uint8Array(size)));
        tx.oncomplete = () => add(size);
        tx.onabort = () => (size > 8 ? add(Math.floor(size / 2)) : done());
      };
      // As much as random numbers are to be had at once.
      add(65_536);
    };
  });
}

/** Keeps a log of version 1 open and makes way for nobody. @param name the database's */
export function holdOlder(name: string): Promise<void> {
  return new Promise((done, failed) => {
    const opening = indexedDB.open(name, 1);
    opening.onerror = () => failed(opening.error);
    opening.onupgradeneeded = () => {
      const events = opening.result.createObjectStore("events", { keyPath: "id" });
      events.createIndex("session", "session");
      opening.result.createObjectStore("device");
      opening.result.createObjectStore("damaged", { autoIncrement: true });
    };
    opening.onsuccess = () => {
      window.held = { release: () => opening.result.close() };
      done();
    };
  });
}

/**
 * Holds everything in the log in one endless transaction, behind which all others wait as they would
 * for a disk that does not answer.
 * @param name the database's
 */
export function holdAll(name: string): Promise<void> {
  return new Promise((done, failed) => {
    const opening = indexedDB.open(name);
    opening.onerror = () => failed(opening.error);
    opening.onsuccess = () => {
      const db = opening.result;
      const tx = db.transaction(db.objectStoreNames, "readwrite");
      let isHeld = true;
      window.held = {
        release() {
          isHeld = false;
        },
      };
      tx.oncomplete = () => db.close();
      const goOn = () => {
        done();
        // A transaction lasts as long as it is asked for something.
        if (isHeld) tx.objectStore("device").count().onsuccess = goOn;
      };
      goOn();
    };
  });
}

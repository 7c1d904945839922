/** Reads what is on the disk, past the app. */
import type { Page } from "playwright-core";
import type { LogEvent } from "../../src/log/event.ts";
import { LOG_NAME } from "../../src/log/log-name.ts";

/** Every event that is stored, none where there is no log yet; from a page of the app's own place on the web. */
export function storedEvents(page: Page): Promise<LogEvent[]> {
  return page.evaluate(
    (name) =>
      new Promise<LogEvent[]>((done, failed) => {
        const opening = indexedDB.open(name);
        let isNew = false;
        opening.onupgradeneeded = () => {
          // To make one would be the app's own affair.
          isNew = true;
          opening.transaction?.abort();
        };
        opening.onerror = () => (isNew ? done([]) : failed(opening.error));
        opening.onsuccess = () => {
          const db = opening.result;
          const reading = db.transaction("events").objectStore("events").getAll();
          reading.onerror = () => failed(reading.error);
          reading.onsuccess = () => {
            db.close();
            done(reading.result);
          };
        };
      }),
    LOG_NAME,
  );
}

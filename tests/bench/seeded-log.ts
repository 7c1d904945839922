/** A log of many sessions, put into a page's store past the app, since saying it would take days. */
import type { Page } from "playwright-core";

export interface LogSize {
  sessions: number;
  /** Of each session. */
  events: number;
  /** The id of the only session; absent for ids of their own. */
  only?: string;
}

/** Day after day, the last one yesterday: for each fish a drop, a sign and feed, now and then more. */
export async function seedLog(page: Page, size: LogSize): Promise<void> {
  await page.evaluate(writeLog, size);
}

/** Self-contained, since it is sent to the page as text. */
async function writeLog({ sessions, events, only }: LogSize): Promise<void> {
  const finished = <T>(request: IDBRequest<T>) =>
    new Promise<T>((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  const dayMs = 24 * 3_600_000;
  const lengthMs = 8 * 3_600_000;
  let seed = 1;
  // Numerical Recipes' linear congruential generator, from memory: any will do.
  const random = () => {
    seed = (1_664_525 * seed + 1_013_904_223) % 2 ** 32;
    return seed / 2 ** 32;
  };
  const pick = <T>(of: readonly T[]) => of[Math.floor(random() * of.length)] as T;
  const statementAt = (n: number): object => {
    const turn = n % 5;
    if (n % 50 === 2)
      return { kind: "change", rig: pick(["1", "2"]), depthMm: pick([400, 600, 1200, 1800]) };
    if (turn === 0) return { kind: "drop" };
    if (turn === 1) return { kind: "sign", sort: pick(["bite", "missed", "knock"]) };
    if (turn === 2)
      return random() < 0.2
        ? { kind: "loss", cause: "pulled" }
        : {
            kind: "fish",
            species: pick(["carp", "f1", "skimmer", "roach"]),
            weightG: 200 + Math.floor(1500 * random()),
            unit: { weight: "lb" },
          };
    if (turn === 3) return { kind: "feed", how: "pot", bait: "pellet", amountG: 5 };
    return { kind: "change", bait: pick(["pellet", "maggot", "worm"]) };
  };
  const db = await finished(indexedDB.open("pegscribe"));
  for (let day = 0; day < sessions; day += 1) {
    const session = only ?? `day-${day}`;
    const from = Date.now() - (only ? lengthMs / 2 : (sessions - day) * dayMs);
    const lengthOf = only ? lengthMs / 2 - 1000 : lengthMs;
    const tx = db.transaction(["events", "digests"], "readwrite");
    const store = tx.objectStore("events");
    for (let n = 0; n < events; n += 1) {
      const body =
        n === 0
          ? { kind: "plan", plan: { water: pick(["Osier Lake", "Marram Water"]) } }
          : {
              kind: "entry",
              statement: n === 1 ? { kind: "session", act: "start" } : statementAt(n),
            };
      store.put({
        ...{ v: 1, id: `${session}-${n}`, session, device: "seeded", verdict: "log" },
        ...{ seq: day * events + n + 1, at: Math.floor(from + (n * lengthOf) / events), body },
        heard: { text: "as it was said on the day", by: "offline", confidence: 0.8 },
      });
    }
    tx.objectStore("digests").put({ session });
    await new Promise((done, failed) => {
      tx.oncomplete = done;
      tx.onerror = failed;
    });
  }
  db.close();
}

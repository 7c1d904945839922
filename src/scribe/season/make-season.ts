import type { LogStore } from "../../log/store.ts";
import type { Desks } from "../desks.ts";
import { type Clerk, clerkOf } from "./clerk.ts";
import { distantClerk } from "./distant-clerk.ts";
import { Season } from "./season.ts";

/** The season of the angler's own log. */
export function makeSeason(desks: Desks): Season {
  const { store } = desks.own;
  return new Season({
    store,
    clerk: hire(store),
    async begin(notes) {
      desks.newSession();
      await desks.own.notebook.value.write(notes);
    },
  });
}

/** A clerk in a worker; here, where the browser lets none be. */
function hire(store: LogStore): Clerk {
  try {
    const worker = new Worker(new URL("./season-worker.ts", import.meta.url), { type: "module" });
    return distantClerk(worker, () => clerkOf(store));
  } catch {
    return clerkOf(store);
  }
}

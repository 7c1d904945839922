import type { Desks } from "../desks.ts";
import { distantClerk } from "./distant-clerk.ts";
import { Season } from "./season.ts";

/** The season of the angler's own log, with its sums worked out in a worker. */
export function makeSeason(desks: Desks): Season {
  const worker = new Worker(new URL("./season-worker.ts", import.meta.url), { type: "module" });
  return new Season({
    store: desks.own.store,
    clerk: distantClerk(worker),
    async begin(notes) {
      desks.newSession();
      await desks.own.notebook.value.write(notes);
    },
  });
}

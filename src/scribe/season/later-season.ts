import type { Desks } from "../desks.ts";
import type { Season } from "./season.ts";

/** The season, fetched when first asked for; where that failed, it is tried again the next time. */
export function laterSeason(desks: Desks): () => Promise<Season> {
  let made: Promise<Season> | undefined;
  return () => {
    made ??= import("./make-season.ts").then(
      ({ makeSeason }) => makeSeason(desks),
      (cause) => {
        made = undefined;
        throw cause;
      },
    );
    return made;
  };
}

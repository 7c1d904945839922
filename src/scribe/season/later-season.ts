import type { Desks } from "../desks.ts";
import type { Season } from "./season.ts";

export function laterSeason(desks: Desks) {
  let made: Promise<Season> | undefined;
  let here: Season | undefined;
  const make = async () => {
    const { makeSeason } = await import("./make-season.ts");
    here = makeSeason(desks);
    return here;
  };
  return {
    /** The season, fetched when first asked for; where that failed, it is tried again the next time. */
    season(): Promise<Season> {
      made ??= make().catch((cause) => {
        made = undefined;
        throw cause;
      });
      return made;
    },
    /** Whether a deleted session can still be put back. */
    canPutBack: () => here?.takenOut.value !== undefined,
  };
}

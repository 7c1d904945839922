/** What the sums try to tell, as it truly is on a day. */
import { MS_PER_HOUR } from "../../src/analysis/units.ts";
import { MINUTE } from "../analysis/fixtures/session.ts";
import type { Day } from "./day.ts";
import type { Stay } from "./fishing.ts";
import { LANDED, type Place } from "./water.ts";

export const hoursOf = ({ from, to }: Pick<Stay, "from" | "to">): number =>
  ((to - from) * MINUTE) / MS_PER_HOUR;

/** Fish an hour at a place in the long run, the time for handling them counted in. */
export const fishPerHour = ({ kind }: Day, { bitesPerHour }: Place): number =>
  LANDED / (1 / bitesPerHour + kind.handlingMin / 60);

/** Fish an hour to be expected of the stays at some places, each by the time spent there. */
export function expectedRate(day: Day, ofPlace: (place: Place) => boolean): number {
  const stays = day.stays.filter(({ place }) => ofPlace(place));
  const hours = stays.reduce((total, stay) => total + hoursOf(stay), 0);
  const fish = stays.reduce(
    (total, stay) => total + hoursOf(stay) * fishPerHour(day, stay.place),
    0,
  );
  return fish / hours;
}

/** The same for the last `minutes` fished. */
export function expectedRecently(day: Day, minutes: number): number {
  let left = minutes;
  let fish = 0;
  for (const { place, from, to } of day.stays.toReversed()) {
    const length = Math.min(left, to - from);
    fish += (length / 60) * fishPerHour(day, place);
    left -= length;
  }
  return fish / (minutes / 60);
}
